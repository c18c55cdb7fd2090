namespace Headroom.Tests;

/// <summary>How far the long proofs go: in full under <c>./test --long</c>, a tenth otherwise.</summary>
internal static class Long
{
    public static bool On => !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("HEADROOM_LONG"));

    /// <summary>Samples to draw: all of them in a long run, otherwise a tenth, and never none.</summary>
    public static int Samples(int full) => On ? full : Math.Max(1, full / 10);
}
