namespace Headroom.Engineering.Heat;

/// <summary>What would mend air that is too warm, costless first; only what keeps limit and reserve is said.</summary>
internal static class HeatAdvice
{
    private const double SecondsPerHour = 3600;
    private const double SquareCentimetres = 1e4;

    // No wall of a cupboard takes a larger vent than this [m²].
    private const double LargestVent = 0.25;

    /// <summary>The advice for a unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="result">The result it belongs to.</param>
    /// <param name="wanted">The warmest inlet that keeps limit and reserve [°C].</param>
    public static List<string> Of(UnitHeat unit, HeatResult result, double wanted)
    {
        var advice = new List<string>();
        if (unit is not { Worst: { } worst, Place: { } place })
            return advice;
        if (unit.Unit.Rack is { Blanked: not true } rack && worst.Fan.Returned > 0 && worst.Inlet - worst.Fan.Returned <= wanted)
            advice.Add($"panels in the empty units of rack {rack.Id} keep its warm air from coming back");
        var air = place.In(worst.Name);
        var above = worst.Inlet - (air?.Celsius ?? worst.Celsius);
        if (place.Box is { } box && air?.Around is { } around && place.Load.OrdinaryWatts is { } watts)
            Cooled(advice, (place.Space.Id, place.Space.Size?.Value.Height), (box, watts, around, wanted - above - around), result.Altitude);
        foreach (var other in result.Places)
        {
            if (other.Box is null && other.Space.Id != place.Space.Id && other.Cases.Count > 0 && other.Cases.All(one => one.Celsius + above <= wanted))
                advice.Add($"{unit.Unit.Id} in {other.Space.Id} keeps it: it is never warmer there than {Words.Of(other.Cases.Max(one => one.Celsius) ?? 0)} °C; see that it is not heard");
        }

        if (advice.Count == 0 && air is { Around: null })
            advice.Add($"cooler air into {place.Space.Id}: {Words.Of(Math.Round(worst.Inlet - wanted, 1))} K less, whatever brings it");
        return advice;
    }

    private static void Cooled(List<string> advice, (string Id, double? Height) space, (WarmBox Box, double Watts, double Around, double Kelvins) than, double altitude)
    {
        if (than.Kelvins <= 0)
        {
            advice.Add($"no vent mends it: the air around {space.Id} is too warm already at {Words.Of(than.Around)} °C");
            return;
        }

        var carried = than.Watts - (than.Box.WattsPerKelvin ?? 0) * than.Kelvins;
        if (carried <= 0)
            return;
        var density = Air.Density(than.Around, altitude);
        if (space.Height is { } height)
        {
            // The middles of a low and a high vent can stand three quarters of the height apart.
            var apart = Math.Round(0.75 * height, 1);
            var area = Vents.AreaFor(carried, than.Kelvins, apart, than.Around, density);
            if (area <= LargestVent)
                advice.Add($"two vents of {Words.Of(Math.Ceiling(area * SquareCentimetres))} cm² free area each, one low and one high, {Words.Of(apart)} m apart, keep it without a fan");
        }

        var flow = Air.FlowFor(carried, than.Kelvins, density) * SecondsPerHour;
        advice.Add($"a fan that draws {Words.Of(Math.Ceiling(flow))} m³/h out of {space.Id}, at the pressure its grilles take, keeps it; what is printed on it holds for free air, about twice as much");
    }
}
