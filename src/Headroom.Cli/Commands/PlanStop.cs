namespace Headroom.Cli.Commands;

/// <summary>Stops a plan after some time, or when somebody presses Ctrl-C: what was found by then is still told.</summary>
internal sealed class PlanStop : IDisposable
{
    private readonly CancellationTokenSource _source = new();

    /// <summary>Listens for Ctrl-C.</summary>
    public PlanStop() => Console.CancelKeyPress += Pressed;

    /// <summary>Told when it is to stop.</summary>
    public CancellationToken Token => _source.Token;

    /// <summary>Stops after some seconds.</summary>
    public void After(double seconds) => _source.CancelAfter(TimeSpan.FromSeconds(seconds));

    /// <inheritdoc/>
    public void Dispose()
    {
        Console.CancelKeyPress -= Pressed;
        _source.Dispose();
    }

    // The second time it ends as always.
    private void Pressed(object? sender, ConsoleCancelEventArgs pressed)
    {
        pressed.Cancel = !_source.IsCancellationRequested;
        _source.Cancel();
    }
}
