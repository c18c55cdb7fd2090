using Headroom.Domain.Quantities;
using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Sums.Standby;

/// <summary>The two rows of a discharge table as they are typed.</summary>
internal static class TableInputs
{
    /// <summary>The powers of the table.</summary>
    public static readonly QuantityInput RowWatts = new("row-watts", "the powers of one block's table, as many as times", Watts.Units, new(0.1, 20_000, "W"))
    {
        IsList = true, Count = (2, 40), ListExample = "177 W, 85.2 W, 49.4 W",
    };

    /// <summary>The times of the table.</summary>
    public static readonly QuantityInput RowTimes = new("row-times", "the times of the same table, in the same order", Seconds.Units, new(0.1, 100_000, "min"))
    {
        IsList = true, Count = (2, 40), ListExample = "10 min, 30 min, 60 min",
    };

    /// <summary>The table; null with the reason when it is none.</summary>
    public static DischargeTable? Read(SumGiven given, out string reason)
    {
        try
        {
            reason = "";
            return new DischargeTable([.. given.All(RowTimes)], [.. given.All(RowWatts)]);
        }
        catch (ArgumentException slip)
        {
            reason = slip.Message.Split(" (Parameter", StringSplitOptions.None)[0].TrimEnd('.');
            return null;
        }
    }
}
