using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Fields;

/// <summary>What an endpoint draws in each of its states.</summary>
internal static class DrawFields
{
    private static readonly Field<Given<Watts>>[] States =
    [
        new("typical", () => Sensible.Draw, "What it draws at its connector on a usual day.", "6.4 W measured"),
        new("peak", () => Sensible.Draw, "The most it draws, with everything on.", "12.1 W"),
        new("start", () => Sensible.Draw, "What it draws while it starts.", "8 W"),
        new("night", () => Sensible.Draw, "What it draws at night, such as a camera with its lamps on.", "11 W"),
        new("frost", () => Sensible.Draw, "What it draws in frost, such as a camera with its heater on.", "22 W"),
    ];

    /// <summary>The keys, which are also the names of the states.</summary>
    public static IReadOnlyList<Field> All => States;

    /// <summary>The draws as far as they are written.</summary>
    public static IReadOnlyDictionary<string, Given<Watts>> Build(Values values) =>
        States.Where(values.Has).ToDictionary(state => state.Name, values.Must);
}
