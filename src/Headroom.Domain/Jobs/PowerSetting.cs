using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>How a switch hands out watts. The catalogue has the model's way; a design may say otherwise. Null means "as the model does".</summary>
/// <param name="ReservesBy">What it sets aside for a port in use.</param>
/// <param name="AtStart">What it sets aside for a port before anything is negotiated or measured.</param>
/// <param name="AtRefusal">What it does with the ports after one that does not fit.</param>
/// <param name="Retries">Whether a refused port is tried again when watts come free.</param>
/// <param name="ShedOrder">Which port of the lowest priority loses its watts first.</param>
/// <param name="NegotiatedCounts">Which end's figure is set aside after negotiation.</param>
/// <param name="PortLimits">The most a port may give [W], by port.</param>
/// <param name="Priorities">Who is served first, by port.</param>
/// <param name="EndpointPriorities">Who is served first, by the id of the endpoint or drop.</param>
public sealed record PowerSetting(
    ReservesBy? ReservesBy,
    AtStart? AtStart,
    AtRefusal? AtRefusal,
    bool? Retries,
    ShedOrder? ShedOrder,
    NegotiatedCounts? NegotiatedCounts,
    IReadOnlyDictionary<int, Given<Watts>> PortLimits,
    IReadOnlyDictionary<int, Priority> Priorities,
    IReadOnlyDictionary<string, Priority> EndpointPriorities)
{
    /// <summary>A setting that says nothing.</summary>
    public static PowerSetting Silent { get; } = new(
        null, null, null, null, null, null, new Dictionary<int, Given<Watts>>(), new Dictionary<int, Priority>(), new Dictionary<string, Priority>());

    /// <summary>This setting, completed by another where it is silent; ports and endpoints are taken over one by one.</summary>
    /// <param name="other">The setting to fall back on.</param>
    /// <returns>The completed setting.</returns>
    public PowerSetting Over(PowerSetting other) => new(
        ReservesBy ?? other.ReservesBy,
        AtStart ?? other.AtStart,
        AtRefusal ?? other.AtRefusal,
        Retries ?? other.Retries,
        ShedOrder ?? other.ShedOrder,
        NegotiatedCounts ?? other.NegotiatedCounts,
        Merge(other.PortLimits, PortLimits),
        Merge(other.Priorities, Priorities),
        Merge(other.EndpointPriorities, EndpointPriorities));

    private static IReadOnlyDictionary<TKey, TValue> Merge<TKey, TValue>(
        IReadOnlyDictionary<TKey, TValue> under, IReadOnlyDictionary<TKey, TValue> over)
        where TKey : notnull
    {
        if (over.Count == 0)
            return under;
        if (under.Count == 0)
            return over;
        var merged = new Dictionary<TKey, TValue>(under);
        foreach (var (key, value) in over)
            merged[key] = value;
        return merged;
    }
}
