namespace Glazewright.Cli.Running;

/// <summary>Standard output could not be written: a full disk, a closed descriptor.</summary>
public sealed class AnswerLostException : Exception
{
    /// <summary>A lost answer.</summary>
    /// <param name="cause">What the system said.</param>
    public AnswerLostException(Exception cause)
        : base((cause?.InnerException ?? cause)?.Message.TrimEnd('.'), cause)
    {
    }
}

/// <summary>
/// Standard output or standard error. The first write that fails is told once, under a name of its own; afterwards everything is dropped, so that closing the
/// writers at the end does not fail again.
/// </summary>
/// <param name="inner">The system's stream.</param>
/// <param name="tells">True to throw <see cref="AnswerLostException"/>; false when there is nobody left to tell.</param>
public sealed class StandardStream(Stream inner, bool tells) : Stream
{
    private bool _lost;

    /// <inheritdoc/>
    public override bool CanRead => false;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override void Flush()
    {
        if (!_lost)
        {
            Guarded(inner.Flush);
        }
    }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count)
    {
        if (!_lost)
        {
            Guarded(() => inner.Write(buffer, offset, count));
        }
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    private void Guarded(Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            _lost = true;
            if (tells)
            {
                throw new AnswerLostException(e);
            }
        }
    }
}
