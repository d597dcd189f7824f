using System.Buffers.Binary;
using System.Collections.Concurrent;
using System.Reflection;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Pipeline;

/// <summary>
/// Canonical bytes of stage records, and their hash: constructor parameters in order, then what is set beside them by name, numbers by their bits, text with its
/// length, closed cases by their name. Two records that are equal have the same bytes on every machine.
/// </summary>
public static class Canonical
{
    private static readonly ConcurrentDictionary<Type, Action<Sink, object>> Writers = new();

    /// <summary>Hash of a value.</summary>
    /// <typeparam name="T">A stage record, a number, text, or a list of such.</typeparam>
    /// <param name="value">The value; null is allowed.</param>
    /// <returns>Its hash.</returns>
    /// <exception cref="NotSupportedException">A type stage records must not hold (array, dictionary, class).</exception>
    public static StageHash Hash<T>(T value)
    {
        using Sink sink = new();
        Write(sink, value);
        return sink.Finish();
    }

    /// <summary>Hash of a stage's name, version, scope, input and earlier outputs: its key.</summary>
    /// <param name="stage">Stage name.</param>
    /// <param name="version">Stage version: raise it when results change.</param>
    /// <param name="scope">House id, or empty for the whole range.</param>
    /// <param name="input">Hash of its own input.</param>
    /// <param name="earlier">Hashes of the earlier outputs it reads, in order.</param>
    /// <returns>The key.</returns>
    public static StageHash Key(string stage, int version, string scope, StageHash input, ReadOnlySpan<StageHash> earlier)
    {
        using Sink sink = new();
        sink.Text(stage);
        sink.Number(version);
        sink.Text(scope);
        sink.Text(input.Hex);
        foreach (StageHash hash in earlier)
        {
            sink.Text(hash.Hex);
        }

        return sink.Finish();
    }

    private static void Write(Sink sink, object? value)
    {
        if (value is null)
        {
            sink.Number(-1);
            return;
        }

        Writers.GetOrAdd(value.GetType(), WriterFor)(sink, value);
    }

    private static Action<Sink, object> WriterFor(Type type)
    {
        if (type == typeof(double))
        {
            return (s, v) => s.Number(BitConverter.DoubleToInt64Bits((double)v));
        }

        if (type == typeof(float))
        {
            return (s, v) => s.Number(BitConverter.SingleToInt32Bits((float)v));
        }

        if (type == typeof(int) || type == typeof(long) || type == typeof(bool) || type.IsEnum)
        {
            return (s, v) => s.Number(Convert.ToInt64(v, System.Globalization.CultureInfo.InvariantCulture));
        }

        if (type == typeof(string))
        {
            return (s, v) => s.Text((string)v);
        }

        if (type == typeof(EqList<double>))
        {
            return (s, v) => s.Numbers(MemoryMarshal.AsBytes(((EqList<double>)v).Span));
        }

        if (type == typeof(EqList<float>))
        {
            return (s, v) => s.Numbers(MemoryMarshal.AsBytes(((EqList<float>)v).Span));
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(EqList<>))
        {
            return (s, v) =>
            {
                System.Collections.IEnumerable items = (System.Collections.IEnumerable)v;
                int count = 0;
                foreach (object? item in items)
                {
                    Write(s, item);
                    count++;
                }

                s.Number(count);
            };
        }

        return RecordWriter(type);
    }

    private static Action<Sink, object> RecordWriter(Type type)
    {
        bool isRecord = type.GetMethod("<Clone>$") is not null
            || (type.IsValueType && type.GetMethod("PrintMembers", BindingFlags.Instance | BindingFlags.NonPublic) is not null);
        if (!isRecord)
        {
            throw new NotSupportedException($"{type} is not a record: stage records hold records, numbers, text and EqList only.");
        }

        ConstructorInfo? constructor = type
            .GetConstructors(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
            .Where(c => c.GetParameters() is not [var only] || only.ParameterType != type)
            .MaxBy(c => c.GetParameters().Length);
        PropertyInfo[] given = [.. (constructor?.GetParameters() ?? []).Select(p =>
            type.GetProperty(p.Name!, BindingFlags.Instance | BindingFlags.Public | BindingFlags.IgnoreCase)
            ?? throw new NotSupportedException($"{type}: no property for constructor parameter '{p.Name}'."))];

        // What is set beside the constructor counts too: without it two records that differ would share a key.
        IEnumerable<PropertyInfo> beside = type.GetProperties(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
            .Where(p => p.CanWrite && Backing(p) is not null && !given.Any(g => g.Name == p.Name)).OrderBy(p => p.Name, StringComparer.Ordinal);
        Func<object, object?>[] parts = [.. given.Concat(beside).Select(Reader)];
        string name = type.FullName!;
        return (s, v) =>
        {
            s.Text(name);
            foreach (Func<object, object?> part in parts)
            {
                Write(s, part(v));
            }
        };
    }

    // A field is read as it stands; a property's getter would be compiled for this first, and a package has more than a thousand.
    private static Func<object, object?> Reader(PropertyInfo property) =>
        Backing(property) is { } field ? field.GetValue : property.GetValue;

    private static FieldInfo? Backing(PropertyInfo property) =>
        property.DeclaringType!.GetField($"<{property.Name}>k__BackingField", BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.DeclaredOnly);

    private sealed class Sink : IDisposable
    {
        private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        private readonly byte[] _buffer = new byte[4096];
        private int _used;

        public void Number(long value)
        {
            if (_used > _buffer.Length - 8)
            {
                Flush();
            }

            BinaryPrimitives.WriteInt64LittleEndian(_buffer.AsSpan(_used), value);
            _used += 8;
        }

        public void Text(string value)
        {
            byte[] bytes = Encoding.UTF8.GetBytes(value);
            Number(bytes.Length);
            Flush();
            _hash.AppendData(bytes);
        }

        public void Numbers(ReadOnlySpan<byte> littleEndian)
        {
            Number(littleEndian.Length);
            Flush();
            _hash.AppendData(littleEndian);
        }

        public StageHash Finish()
        {
            Flush();
            return new StageHash(Convert.ToHexStringLower(_hash.GetHashAndReset()));
        }

        public void Dispose() => _hash.Dispose();

        private void Flush()
        {
            _hash.AppendData(_buffer, 0, _used);
            _used = 0;
        }
    }
}
