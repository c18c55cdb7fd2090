namespace Headroom.Engineering.Cabling;

/// <summary>A port type of Ethernet over fibre on one kind of fibre: reach and loss must both be kept.</summary>
/// <param name="Type">The port type of IEEE 802.3, such as <c>10GBASE-SR</c>.</param>
/// <param name="Fibre">The fibre, as a category; with its bandwidth where one category is not enough.</param>
/// <param name="LeastMetres">Least length [m].</param>
/// <param name="ReachMetres">Most length [m].</param>
/// <param name="PowerBudgetDecibels">Light sent over light needed [dB]; null when not recalled.</param>
/// <param name="ChannelDecibels">What cable and connectors may lose [dB].</param>
public sealed record FibrePort(string Type, string Fibre, double LeastMetres, double ReachMetres, double? PowerBudgetDecibels, double ChannelDecibels)
{
    /// <summary>The port types. Source: IEEE 802.3, tables 38-2, 38-5, 38-6, 38-9, 52-6, 52-10, 52-11, 52-14 and clause 59, from memory; 10GBASE-SR on OM3 and OM4 and -LRM seen in documents.</summary>
    public static IReadOnlyList<FibrePort> All =>
    [
        new("1000BASE-SX", "62.5 um 160", 2, 220, 7.5, 2.38), new("1000BASE-SX", "OM1", 2, 275, 7.5, 2.60), new("1000BASE-SX", "50 um 400", 2, 500, 7.5, 3.37),
        new("1000BASE-SX", "OM2", 2, 550, 7.5, 3.56), new("1000BASE-SX", "OM3", 2, 550, 7.5, 3.56), new("1000BASE-SX", "OM4", 2, 550, 7.5, 3.56), new("1000BASE-SX", "OM5", 2, 550, 7.5, 3.56),
        new("1000BASE-LX", "OM1", 2, 550, 7.5, 2.35), new("1000BASE-LX", "OM2", 2, 550, 7.5, 2.35), new("1000BASE-LX", "OM3", 2, 550, 7.5, 2.35),
        new("1000BASE-LX", "OS1a", 2, 5000, 8.0, 4.57), new("1000BASE-LX", "OS2", 2, 5000, 8.0, 4.57),
        new("1000BASE-LX10", "OS1a", 0.5, 10000, null, 6.0), new("1000BASE-LX10", "OS2", 0.5, 10000, null, 6.0),
        new("10GBASE-SR", "OM1", 2, 33, 7.3, 1.6), new("10GBASE-SR", "OM2", 2, 82, 7.3, 1.8), new("10GBASE-SR", "OM3", 2, 300, 7.3, 2.6),
        new("10GBASE-SR", "OM4", 2, 400, 7.3, 2.9), new("10GBASE-SR", "OM5", 2, 400, 7.3, 2.9),
        new("10GBASE-LR", "OS1a", 2, 10000, 9.4, 6.2), new("10GBASE-LR", "OS2", 2, 10000, 9.4, 6.2),
        new("10GBASE-LRM", "OM1", 0.5, 220, null, 1.9), new("10GBASE-LRM", "OM2", 0.5, 220, null, 1.9), new("10GBASE-LRM", "OM3", 0.5, 220, null, 1.9),
    ];

    /// <summary>The row of a port type on a fibre.</summary>
    /// <param name="type">The port type.</param>
    /// <param name="fibre">The fibre's category.</param>
    /// <returns>The row; null when the standard has none.</returns>
    public static FibrePort? Of(string? type, string? fibre)
    {
        foreach (var port in All)
        {
            if (port.Type == type && port.Fibre == fibre)
                return port;
        }

        return null;
    }

    /// <summary>Says whether a link keeps both limits.</summary>
    /// <param name="metres">Its length [m].</param>
    /// <param name="decibels">Its loss [dB].</param>
    /// <returns>True when neither reach nor loss is exceeded.</returns>
    public bool Carries(double metres, double decibels) => metres <= ReachMetres + 1e-9 && decibels <= ChannelDecibels + 1e-9;
}
