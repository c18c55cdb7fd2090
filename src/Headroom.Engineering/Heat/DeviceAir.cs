using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>Entries for devices in lofts, yards, cupboards and hot or cold rooms: the air there against what they are rated for.</summary>
internal sealed class DeviceAir(HeatResult result, Reserve reserve)
{
    private const double MetresPerKelvin = 300;

    private readonly Dictionary<string, DevicePlace?> _places = [];

    /// <summary>Adds the entries of all devices for which there is reason to judge.</summary>
    public void AddTo(List<LedgerEntry> entries)
    {
        foreach (var device in result.Bound.Endpoints)
        {
            if ((device.Run?.Drop.To ?? device.Endpoint.Near) is not { } space || PlaceOf(space) is not { } place)
                continue;
            entries.Add(Warm(device, place));
            if (place.IsCold)
                entries.Add(Cold(device, place));
        }
    }

    // Null where nothing gives reason to judge; found once for each space.
    private DevicePlace? PlaceOf(string id)
    {
        if (_places.TryGetValue(id, out var known))
            return known;
        DevicePlace? place = null;
        foreach (var space in result.Bound.Job.Survey.Spaces)
        {
            if (space.Id == id)
                place = new(space, CasesOf(space));
        }

        return _places[id] = place is { Matters: true } ? place : null;
    }

    // A space in which units stand too has its air worked out already.
    private IReadOnlyList<AirCase> CasesOf(Space space)
    {
        foreach (var place in result.Places)
        {
            if (place.Space.Id == space.Id)
                return place.Cases;
        }

        var cases = new List<AirCase>(space.Temperatures.Count);
        foreach (var (name, written) in space.Temperatures)
            cases.Add(new(name, written, null, null, null));
        return cases;
    }

    private LedgerEntry Warm(BoundEndpoint device, DevicePlace place)
    {
        var rated = device.Model.Body.MostAmbient;
        var most = rated is { } given ? ThermalClass.At(given.Value.Value, result.Altitude, MetresPerKelvin) : (double?)null;
        var celsius = place.Warmest?.Celsius;
        var verdict = Judge.Of(celsius, most, reserve);
        return Entry(device, "air", InletEntries.What("air around it", place.Warmest?.Name ?? ""), new DeviceAirStory(device, place.Space.Id, place.Warmest, reserve)) with
        {
            Demand = celsius,
            Limit = most,
            Reserve = most is { } limit ? reserve.Of(limit) : null,
            Studied = verdict,
            Question = celsius is null ? $"how warm and how cold does it grow in {place.Space.Id}? write its 'temperature', summer and winter" : most is null ? RatingQuestion(device) : null,
            Assumed = place.Space.Kind == "outdoors" ? ["in the shade: sun on its case comes on top"] : [],
            Advice = verdict is Verdict.Short or Verdict.Tight ? ["hang it where it is cooler or in the shade, or take a model that is rated for more"] : [],
        };
    }

    private LedgerEntry Cold(BoundEndpoint device, DevicePlace place)
    {
        // A reserve given as a share is of the limit, and a share of 0 °C means nothing: only an amount counts here.
        var (kept, least, celsius) = (reserve.Amount ?? 0, device.Model.Body.LeastAmbient?.Value.Value, place.Coldest!.Celsius!.Value);
        var verdict = least is { } rated ? Judge.Known(rated, celsius, kept) : Verdict.Unknown;
        return Entry(device, "cold", InletEntries.What("cold around it", place.Coldest.Name), new DeviceAirStory(device, place.Space.Id, place.Coldest, reserve)) with
        {
            Sense = Sense.AtLeast,
            Demand = least,
            Limit = celsius,
            Reserve = kept,
            Studied = verdict,
            Question = least is null ? RatingQuestion(device) : null,
            Advice = verdict is Verdict.Short or Verdict.Tight ? ["hang it where it is warmer, or take a model that is rated for the cold"] : [],
        };
    }

    private static string RatingQuestion(BoundEndpoint device) => $"from how cold to how warm an air is {device.Model.Id} rated? its data sheet says";

    private static LedgerEntry Entry(BoundEndpoint device, string quantity, string what, IEntryStory story) => new()
    {
        Discipline = HeatLedger.Discipline,
        Subject = device.Id,
        Quantity = quantity,
        What = what,
        Unit = "°C",
        Kind = "temperature",
        Studied = Verdict.Unknown,
        Story = story,
    };
}
