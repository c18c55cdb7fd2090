using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Rules;

/// <summary>What is odd about a run.</summary>
internal static class RunQuestions
{
    // ISO/IEC 11801-1 and TIA-568: a permanent link of copper is at most 90 m.
    private const double MostMetres = 90;

    // Shorter than the way out of any closet; a length that was typed in kilometres, or a 0 that means "unknown".
    private const double LeastMetres = 0.5;

    /// <summary>Asks about every drop of the survey.</summary>
    public static void Ask(JobNames names, Slips slips)
    {
        foreach (var drop in names.Job.Survey.Drops)
        {
            Length(drop, names.Catalogue, slips);
            if (drop.From == drop.To)
                slips.Add(RuleCodes.FromIsTo, drop.At, Same(drop), drop.From);
            foreach (var piece in drop.Pieces)
                Piece(piece, drop, names, slips);
            foreach (var cord in new[] { drop.CordAtPanel, drop.CordAtDevice }.OfType<RunPiece>())
                Piece(cord, drop, names, slips);
        }
    }

    private static void Length(Drop drop, Catalogue catalogue, Slips slips)
    {
        var lengths = drop.Pieces.Where(p => !IsFibre(p, catalogue)).Select(p => p.Length).OfType<Given<Metres>>().ToList();
        if (lengths.Count == 0)
            return;
        var metres = 0.0;
        foreach (var length in lengths)
            metres += length.Value.Value;
        var whole = drop.Pieces.All(p => p.Length is not null);
        if (metres > MostMetres + 1e-9)
            slips.Add(RuleCodes.LongRun, lengths[0].At, Long(drop, metres));
        else if (whole && lengths.Count == drop.Pieces.Count && metres <= LeastMetres)
            slips.Add(RuleCodes.ShortRun, lengths[0].At, Short(drop, metres));
    }

    private static bool IsFibre(RunPiece piece, Catalogue catalogue) => piece.Cable is { } cable && catalogue.Fibres.ContainsKey(cable);

    private static void Piece(RunPiece piece, Drop drop, JobNames names, Slips slips)
    {
        if (piece.Cable is not { } id || !names.Catalogue.Cables.TryGetValue(id, out var cable))
            return;
        if (cable.CopperClad)
            slips.Add(RuleCodes.CopperClad, drop.At, Clad(drop, id), id);
        var air = piece.Ambient ?? (piece.By is { } by ? names.Pathways.GetValueOrDefault(by)?.Ambient : null);
        if (air is not null && cable.MostTemperature is { } most && air.Value.Value > most.Value.Value)
            slips.Add(RuleCodes.CableTooWarm, Where(air, drop), Warm(drop, air, cable), id);
    }

    private static Place Where(Given<Celsius> air, Drop drop) => air.At.Line > 0 ? air.At : drop.At;

    private static Said Long(Drop drop, double metres) => new(
        $"the run of drop {drop.Id} is {QuantityText.Show(metres)} m long",
        "90 m is the permanent link limit of the cabling standards (ISO/IEC 11801-1, TIA-568)",
        "Is the length right? Else start it from a nearer closet, or lay fibre.");

    private static Said Short(Drop drop, double metres) => new(
        $"the run of drop {drop.Id} is {QuantityText.Show(metres)} m long",
        "runs are longer than 0.5 m",
        "Is the length right? Leave it out when it is not known.");

    private static Said Same(Drop drop) => new(
        $"drop {drop.Id} starts and ends in {drop.From}", "most drops lead to another space", "Is 'to' right?");

    private static Said Clad(Drop drop, string cable) => new(
        $"drop {drop.Id} is of '{cable}', a cable with a copper skin only",
        "the cabling standards allow solid copper",
        "Is it really what lies there? Then have it replaced before it carries power.");

    private static Said Warm(Drop drop, Given<Celsius> air, CableModel cable) => new(
        $"the air around drop {drop.Id} is {air.Written}",
        $"'{cable.Id}' may become {cable.MostTemperature!.Written}",
        "Is the temperature right? Else take a cable for warmer air or another way.");
}
