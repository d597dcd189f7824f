namespace Glazewright.Web.Parts;

/// <summary>Paints a part of a page again, once for all that changed since the last time, and never on the thread that tells of the change: that one has something to compute.</summary>
/// <param name="invoke">Brings an action to the page's own thread.</param>
/// <param name="paint">The action.</param>
public sealed class Repaint(Func<Action, Task> invoke, Action paint)
{
    private int _isAsked;

    /// <summary>Something has changed; may come from any thread.</summary>
    public void Ask()
    {
        if (Interlocked.Exchange(ref _isAsked, 1) == 0)
        {
            _ = Task.Run(() => invoke(() =>
            {
                Volatile.Write(ref _isAsked, 0);
                paint();
            }));
        }
    }
}
