namespace Headroom.Cli;

/// <summary>What the command answers to whoever started it.</summary>
internal static class ExitCode
{
    /// <summary>Worked out, and nothing is short; tight and unknown are allowed.</summary>
    public const int NothingShort = 0;

    /// <summary>Worked out, and at least one entry is short.</summary>
    public const int Short = 1;

    /// <summary>Not worked out: bad usage, or input that cannot be read or does not hold together.</summary>
    public const int NotWorked = 2;
}
