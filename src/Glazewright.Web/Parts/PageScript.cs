using Microsoft.JSInterop;

namespace Glazewright.Web.Parts;

/// <summary>
/// A script of a page, called as long as the part of the page that asks for it is there. A part can be left between any two steps of its drawing, and a window closed:
/// a call that comes too late then does nothing, and what is still under way when the part is left fails without a word.
/// </summary>
/// <param name="browser">The browser.</param>
public sealed class PageScript(IJSRuntime browser) : IAsyncDisposable
{
    private IJSObjectReference? _module;
    private bool _isLeft;

    /// <summary>Loads the script.</summary>
    /// <param name="address">Where it is.</param>
    /// <returns>Whether it can be called: false when the part was left meanwhile.</returns>
    public Task<bool> LoadAsync(string address) => AsLongAsThere(async () =>
    {
        IJSObjectReference module = await browser.InvokeAsync<IJSObjectReference>("import", "./" + address);
        if (_isLeft)
        {
            await module.DisposeAsync();
            return false;
        }

        _module = module;
        return true;
    });

    /// <summary>Loads the script and calls a function of it.</summary>
    /// <param name="address">Where it is.</param>
    /// <param name="function">The function's name.</param>
    /// <param name="values">What it is given.</param>
    public async Task BeginAsync(string address, string function, params object?[] values)
    {
        if (await LoadAsync(address))
        {
            await CallAsync(function, values);
        }
    }

    /// <summary>Calls a function of the script.</summary>
    /// <param name="function">Its name.</param>
    /// <param name="values">What it is given.</param>
    /// <returns>False when it was not called or the part was left meanwhile.</returns>
    public Task<bool> CallAsync(string function, params object?[] values) => AsLongAsThere(async () =>
    {
        if (_isLeft || _module is null)
        {
            return false;
        }

        await _module.InvokeVoidAsync(function, values);
        return !_isLeft;
    });

    /// <summary>Asks a function of the script that answers yes or no.</summary>
    /// <param name="function">Its name.</param>
    /// <param name="values">What it is given.</param>
    /// <returns>The answer; null when there is none, as the part was left.</returns>
    public async Task<bool?> AskAsync(string function, params object?[] values)
    {
        bool? answer = null;
        await AsLongAsThere(async () =>
        {
            if (!_isLeft && _module is not null)
            {
                answer = await _module.InvokeAsync<bool>(function, values);
            }

            return !_isLeft;
        });
        return _isLeft ? null : answer;
    }

    /// <summary>Leaves the part.</summary>
    public async ValueTask DisposeAsync()
    {
        _isLeft = true;
        await AsLongAsThere(async () =>
        {
            if (_module is not null)
            {
                await _module.DisposeAsync();
            }

            return true;
        });
    }

    private async Task<bool> AsLongAsThere(Func<Task<bool>> step)
    {
        try
        {
            return await step();
        }
        catch (JSDisconnectedException)
        {
            return false;
        }
        catch (Exception e) when (_isLeft && e is JSException or ObjectDisposedException or TaskCanceledException)
        {
            return false;
        }
    }
}
