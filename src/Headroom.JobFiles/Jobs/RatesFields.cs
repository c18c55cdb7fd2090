using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>A firm's file of rates: the keys of an offer that are the same for all of its jobs.</summary>
internal static class RatesFields
{
    /// <summary>The key that says what the file is.</summary>
    public const string FormatKey = "rates";

    private static readonly Field<int> Format = new(FormatKey, new FormatShape(), "The version of the format.", "1") { IsRequired = true };

    /// <summary>The file.</summary>
    public static ObjectShape<Values> Shape { get; } = new("file of rates", [Format, .. MoneyFields.OfTheFirm], values => values) { GoesOn = true };
}
