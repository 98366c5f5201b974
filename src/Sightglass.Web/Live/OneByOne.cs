namespace Sightglass.Web.Live;

/// <summary>Work that takes a while, off everybody's page: one piece after the other, in the order in which it was asked for.</summary>
internal sealed class OneByOne : IDisposable
{
    private readonly SemaphoreSlim _one = new(1);

    /// <summary>Does a piece when those before it are done.</summary>
    /// <exception cref="OperationCanceledException">It was given up.</exception>
    public async Task<T> Do<T>(Func<T> work, CancellationToken cancel = default)
    {
        await _one.WaitAsync(cancel);
        try
        {
            return await Task.Run(work, cancel);
        }
        finally
        {
            Release();
        }
    }

    public void Dispose() => _one.Dispose();

    private void Release()
    {
        try
        {
            _one.Release();
        }
        catch (ObjectDisposedException)
        {
            // The program ended meanwhile: nobody waits any more.
        }
    }
}
