namespace Headroom.JobFiles.Fields;

/// <summary>Ports beside each other, by the numbers printed on them.</summary>
/// <param name="First">The lowest, from 1.</param>
/// <param name="Last">The highest; the same as the first for one port.</param>
internal sealed record PortRange(int First, int Last)
{
    /// <summary>The numbers from the first to the last.</summary>
    public int[] Numbers()
    {
        var numbers = new int[Last - First + 1];
        for (var i = 0; i < numbers.Length; i++)
            numbers[i] = First + i;
        return numbers;
    }
}
