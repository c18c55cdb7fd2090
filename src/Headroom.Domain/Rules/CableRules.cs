using System.Globalization;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>A run is of one kind of cable from end to end, and no length is below nothing.</summary>
internal static class CableRules
{
    /// <summary>Checks every drop of the survey.</summary>
    public static void Check(JobNames names, Slips slips)
    {
        foreach (var drop in names.Job.Survey.Drops)
        {
            foreach (var piece in drop.Pieces)
                Length(piece, drop, slips);
            if (drop.CordAtPanel is { } panel)
                Length(panel, drop, slips);
            if (drop.CordAtDevice is { } device)
                Length(device, drop, slips);
            Mixed(drop, names, slips);
        }
    }

    /// <summary>Says whether a drop is of fibre.</summary>
    /// <param name="drop">The drop.</param>
    /// <param name="names">What the job and its catalogue hold.</param>
    /// <returns>True for fibre, false for copper, null when its cable is not known.</returns>
    public static bool? IsFibre(Drop drop, JobNames names)
    {
        foreach (var piece in drop.Pieces)
        {
            if (piece.Cable is { } cable && (names.Catalogue.Fibres.ContainsKey(cable) || names.Catalogue.Cables.ContainsKey(cable)))
                return names.Catalogue.Fibres.ContainsKey(cable);
        }

        return null;
    }

    private static void Length(RunPiece piece, Drop drop, Slips slips)
    {
        if (piece.Length is not { } length || length.Value.Value >= 0)
            return;
        var said = new Said(
            $"a length of drop {drop.Id} is {length.Value.Value.ToString(CultureInfo.InvariantCulture)} m",
            "a length is 0 or more",
            "Measure it, or leave it out when it is not known.");
        slips.Add(RuleCodes.NoExtent, length.At.Line > 0 ? length.At : drop.At, said);
    }

    private static void Mixed(Drop drop, JobNames names, Slips slips)
    {
        var fibre = drop.Pieces.FirstOrDefault(piece => piece.Cable is { } cable && names.Catalogue.Fibres.ContainsKey(cable));
        var copper = drop.Pieces.FirstOrDefault(piece => piece.Cable is { } cable && names.Catalogue.Cables.ContainsKey(cable));
        if (fibre is null || copper is null)
            return;
        var said = new Said(
            $"drop {drop.Id} has a piece of the fibre '{fibre.Cable}' and one of the copper cable '{copper.Cable}'",
            "a run is of one kind from end to end",
            "Write two drops, with what turns light into current between them, or correct the cable.");
        slips.Add(RuleCodes.MixedRun, drop.At, said);
    }
}
