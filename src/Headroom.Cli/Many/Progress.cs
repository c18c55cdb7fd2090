namespace Headroom.Cli.Many;

/// <summary>Says on a terminal how far many jobs, or other things, are, once that takes more than a second; elsewhere it says nothing.</summary>
internal sealed class Progress : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Step = TimeSpan.FromMilliseconds(200);

    private readonly TextWriter _to;
    private readonly int _all;
    private readonly string _things;
    private readonly Timer? _timer;
    private readonly Lock _pen = new();
    private int _done;
    private bool _said;

    /// <summary>Begins.</summary>
    /// <param name="to">The messages.</param>
    /// <param name="all">How many there are.</param>
    /// <param name="isTerminal">Whether somebody looks on.</param>
    /// <param name="things">What they are.</param>
    public Progress(TextWriter to, int all, bool isTerminal, string things = "jobs")
    {
        (_to, _all, _things) = (to, all, things);
        if (isTerminal)
            _timer = new Timer(_ => Say(), null, Patience, Step);
    }

    /// <summary>One more is through.</summary>
    public void Done() => Interlocked.Increment(ref _done);

    /// <summary>Writes how far it is, over what it wrote before.</summary>
    public void Say()
    {
        lock (_pen)
        {
            _said = true;
            _to.Write($"\r{Volatile.Read(ref _done)} of {_all} {_things}");
            _to.Flush();
        }
    }

    /// <summary>Takes the line away again.</summary>
    public void Dispose()
    {
        using var ended = new ManualResetEvent(false);
        if (_timer is not null && _timer.Dispose(ended))
            ended.WaitOne();
        if (!_said)
            return;
        _to.Write($"\r{new string(' ', $"{_all} of {_all} {_things}".Length)}\r");
        _to.Flush();
    }
}
