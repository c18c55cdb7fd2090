using System.Runtime.CompilerServices;

namespace Headroom.Tests;

/// <summary>Compares what a person reads with a file that a person has read and accepted.</summary>
internal static class Golden
{
    /// <summary>
    /// Passes when the text equals <c>Expected/name</c> in the calling test's project. Otherwise writes what came as
    /// <c>name.received</c> beside it and fails. HEADROOM_ACCEPT=1 takes what came as what is expected.
    /// </summary>
    public static void Agrees(string name, string text, [CallerFilePath] string caller = "") =>
        Agrees(Path.Combine(ProjectFolder(caller), "Expected"), name, text, Accepting);

    public static bool Accepting => Environment.GetEnvironmentVariable("HEADROOM_ACCEPT") == "1";

    public static void Agrees(string folder, string name, string text, bool accept)
    {
        var expectedFile = Path.Combine(folder, name);
        var receivedFile = expectedFile + ".received";
        var received = Normal(text);
        var expected = File.Exists(expectedFile) ? Normal(File.ReadAllText(expectedFile)) : null;
        File.Delete(receivedFile);
        if (received == expected)
            return;

        Directory.CreateDirectory(Path.GetDirectoryName(expectedFile)!);
        File.WriteAllText(accept ? expectedFile : receivedFile, received);
        if (!accept)
            Assert.Fail($"{Difference(expected, received)}\n  expected: {expectedFile}\n  received: {receivedFile}\nLook at both; HEADROOM_ACCEPT=1 accepts what was received.");
    }

    /// <summary>The first line that differs, as a sentence.</summary>
    public static string Difference(string? expected, string received)
    {
        if (expected is null)
            return "Nothing has been accepted yet.";

        string[] left = expected.Split('\n'), right = received.Split('\n');
        var at = 0;
        while (at < left.Length && at < right.Length && left[at] == right[at])
            at++;
        return $"Line {at + 1} differs.\n  expected: {Shown(left, at)}\n  received: {Shown(right, at)}";
    }

    private static string Shown(string[] lines, int at) => at < lines.Length ? $"\"{lines[at]}\"" : "(the text has ended)";

    private static string Normal(string text) => text.ReplaceLineEndings("\n");

    // The caller's path is the compiler's: in a deterministic build it begins with /_/ and must be found again under the root.
    private static string ProjectFolder(string caller)
    {
        var parts = caller.Split('/', '\\');
        var project = parts[Array.LastIndexOf(parts, "tests") + 1];
        return Repository.PathOf($"tests/{project}");
    }
}
