namespace Headroom.Engineering.Heat;

/// <summary>The words in which heat is told.</summary>
internal static class HeatWords
{
    /// <summary>A temperature or a difference to a tenth: no thermometer of the trade says more.</summary>
    public static string Tenth(double value) => Words.Of(Math.Round(value, 1));

    /// <summary>Why the air at an inlet is as warm as it is.</summary>
    public static string Why(UnitHeat unit, UnitCase one)
    {
        var air = unit.Place?.In(one.Name);
        var place = unit.Place!.Space;
        var why = air is { WorkedCounts: true, Around: { } around, Rise: { } rise }
            ? $"{Tenth(around)} °C in {place.Enclosure?.Beside} and {Tenth(rise)} K more in {place.Id}"
            : $"{Tenth(air?.Celsius ?? one.Celsius)} °C in {place.Id}, as written";
        var cabinet = one.Celsius - (air?.Celsius ?? one.Celsius);
        if (cabinet > 0)
            why += $", {Tenth(cabinet)} K more in its cabinet";
        return one.Fan.Returned > 0.05 ? $"{why}, {Tenth(one.Fan.Returned)} K for what comes back of its own air" : why;
    }
}
