namespace Headroom.Tests;

/// <summary>What a process left behind; line ends are \n on every system.</summary>
internal sealed record ProcessResult(int ExitCode, string Out, string Err);
