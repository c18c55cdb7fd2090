using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Acoustics;

/// <summary>What a cabinet or a cupboard keeps of the sound inside it.</summary>
/// <param name="Value">The loss [dB]; 0 when none is taken.</param>
/// <param name="Uncertainty">Its standard uncertainty [dB].</param>
/// <param name="Origin">Where it comes from, in words; empty when there is nothing round the source.</param>
/// <param name="Assumed">What was assumed; null when nothing.</param>
internal sealed record CupboardLoss(double Value, double Uncertainty, string Origin, string? Assumed)
{
    /// <summary>Nothing is round it.</summary>
    public static CupboardLoss None { get; } = new(0, 0, "", null);

    // ± 5 dB for a small enclosure close to its walls (reference estimate), taken as 95 %.
    private const double EstimateUncertainty = 2.5;

    // Board of 16 mm by its mass, cracks round a door that shuts, bare walls inside: assumed.
    private const double AssumedReduction = 25;
    private const double Cracks = 0.01;
    private const double BareInside = 0.05;

    /// <summary>The loss of a rack's cabinet.</summary>
    internal static CupboardLoss OfCabinet(Rack? rack, Domain.Catalogues.Catalogue catalogue)
    {
        if (rack?.Cabinet is not { } id || !catalogue.Cabinets.TryGetValue(id, out var model))
            return None;
        return model.InsertionLoss is { } loss
            ? new(loss.Value.Value, loss.PlusMinus / 2 ?? EstimateUncertainty, $"cabinet {id}, {Origins.Of(loss)}", null)
            : new(0, EstimateUncertainty, $"cabinet {id}", $"insertion loss of cabinet {id} not known: none taken");
    }

    /// <summary>The loss of a cupboard towards the space it looks into.</summary>
    internal static CupboardLoss OfCupboard(Space space)
    {
        if (space.Enclosure is not { } walls || space.Size is not { } size)
            return new(0, EstimateUncertainty, space.Id, $"walls or size of {space.Id} not known: no loss taken");
        if (walls.Vents is not { } vents)
            return new(0, EstimateUncertainty, space.Id, $"vents of {space.Id} not surveyed: no loss taken");
        var open = Math.Clamp(vents.Value.Value / Faces(size.Value, walls.Exposed), Cracks, 1);
        var reduction = walls.Reduction?.Value.Value ?? AssumedReduction;
        var loss = Math.Round(Enclosures.InsertionLoss(reduction, open, BareInside), 1);
        var of = walls.Reduction is { } given ? $"walls {given.Written}, {Origins.Of(given)}" : $"walls {Words.Of(AssumedReduction)} dB, assumed";
        var note = $"{space.Id} keeps {Words.Of(loss)} dB: {of}; {Words.Of(open * 100)} % of it open; bare inside";
        return new(loss, EstimateUncertainty, $"{space.Id}: {of}, {Words.Of(open * 100)} % open", note);
    }

    /// <summary>Two losses one round the other.</summary>
    internal CupboardLoss And(CupboardLoss other) => new(
        Value + other.Value,
        Precision.RootSum(Uncertainty, other.Uncertainty),
        Origin.Length == 0 ? other.Origin : other.Origin.Length == 0 ? Origin : $"{Origin}; {other.Origin}",
        Assumed is null ? other.Assumed : other.Assumed is null ? Assumed : $"{Assumed}; {other.Assumed}");

    private static double Faces(Size size, IReadOnlyList<string> exposed)
    {
        var (front, side, top) = (size.Length * size.Height, size.Width * size.Height, size.Length * size.Width);
        if (exposed.Count == 0)
            return front + 2 * side + top;
        return exposed.Sum(face => face switch
        {
            "front" or "back" => front,
            "left" or "right" => side,
            "sides" => 2 * side,
            _ => top,
        });
    }
}
