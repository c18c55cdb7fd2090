using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles;

/// <summary>Reads the firm's own readings of watts at ports from a CSV file: site, model, mode, watts.</summary>
public static class FirmReadingFile
{
    // No port of the standard gives more than 90 W (IEEE 802.3, class 8); passive ones are taken to as well.
    private const double MostWatts = 100;

    private static readonly string[] Modes = ["typical", "peak", "night", "frost", "start"];

    private static readonly SheetKind Kind = new(
        "firm readings",
        "reading",
        [
            new("site", CellKind.Text, "site", "job", "client", "where", "standort", "site name"),
            new("model", CellKind.Name, "model", "type", "device", "modell", "modèle"),
            new("mode", CellKind.Text, "mode", "while", "state", "condition", "zustand"),
            new("watts", CellKind.Measured, "watts", "power", "draw", "value", "measured", "reading", "leistung", "puissance") { Units = Watts.Units },
            new("what", CellKind.Name, "what", "quantity", "measurement", "messgröße", "grandeur"),
            new("calibrated", CellKind.Text, "calibrated", "kalibriert", "étalonné"),
            new("at most", CellKind.Text, "at most", "upper bound"),
            new("unit", CellKind.Unit, "unit", "units", "einheit", "unité"),
            new("remark", CellKind.Aside, "at", "place", "point", "predicted", "prediction", "expected", "meter", "note", "notes", "remark", "remarks", "comment", "date", "day", "on", "port", "switch", "with", "instrument", "no", "no.", "nr"),
        ],
        [["site"], ["model"], ["watts"]]) { Section = [] };

    /// <summary>Reads the file; it is never changed.</summary>
    /// <param name="path">The file, as the person named it.</param>
    /// <returns>The readings in the order of the file, or findings that say why not.</returns>
    public static Loaded<IReadOnlyList<FirmReading>> Read(string path)
    {
        var sheet = new PlainSheet(Kind, new SheetPlan(path, Kind.Name, new Place("what was typed", 0, 0)));
        var readings = sheet.Read().Where(IsDraw).Select(row => Reading(row, sheet)).OfType<FirmReading>().ToList();
        return new(sheet.Slips.Stands ? null : readings, sheet.Slips.Findings);
    }

    // The same file may hold readings of other things, bounds, and those of an instrument out of calibration; none says what a device draws.
    private static bool IsDraw(PlainRow row) =>
        row.Of("what") is null or "watts" && (row.Of("what") is null || row.Of("model") is not null) && row.Of("calibrated") is not "no" && row.Of("at most") is not "yes";

    private static FirmReading? Reading(PlainRow row, PlainSheet sheet)
    {
        if (row.Of("site") is not { } site || row.Of("model") is not { } model || row.Of("watts") is null)
        {
            sheet.Slips.Refuse(SheetCodes.NoKey, row.Row.At, ($"row {row.Row.Number} does not say site, model and watts", "all three in every row", "write what is missing, or take the row out"));
            return null;
        }

        var mode = row.Of("mode") ?? "typical";
        if (!Modes.Contains(mode))
        {
            sheet.Slips.Refuse(SheetCodes.NoResult, row.Row.At, ($"row {row.Row.Number} has the mode '{Words.Short(mode)}'", Words.Or(Modes), "choose one of them; without one it is typical"));
            return null;
        }

        if (sheet.Quantity(row, "watts") is not { } watts)
            return null;
        if (watts is > 0 and <= MostWatts)
            return new(site, model, mode, watts, row.Row.At);
        sheet.Slips.Refuse(SheetCodes.NoQuantity, row.Row.At, ($"row {row.Row.Number} has {QuantityText.Show(watts)} W", $"more than 0 and at most {QuantityText.Show(MostWatts)} W, at one port", "correct it, or take the row out"));
        return null;
    }
}
