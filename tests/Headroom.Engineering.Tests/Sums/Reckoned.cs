using Headroom.Engineering.Sums;

namespace Headroom.Engineering.Tests.Sums;

/// <summary>Works out a sum as it is typed.</summary>
internal static class Reckoned
{
    public static SumAnswer Of(string typed)
    {
        var (sum, reading) = Read(typed);
        Assert.Empty(reading.Complaints);
        return sum.Work(reading.Given!);
    }

    public static IReadOnlyList<string> Complaints(string typed) => Read(typed).Reading.Complaints;

    private static (Sum Sum, SumReading Reading) Read(string typed)
    {
        var words = typed.Split(' ');
        var sum = AllSums.Find(words[0]) ?? throw new InvalidOperationException($"There is no sum '{words[0]}'.");
        return (sum, SumReader.Read(sum, words[1..]));
    }
}
