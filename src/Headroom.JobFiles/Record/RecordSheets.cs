using Headroom.Domain.Quantities;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Record;

/// <summary>The sheets of a firm's record: one table for reader, messages and manual.</summary>
/// <remarks>The words are from memory and common practice, no source; whatever is missing is told by --column.</remarks>
internal static class RecordSheets
{
    private const string ADay = "a day, not after the day of the study";
    private const string AnAmount = "an amount between 0 and 1000000 with the three letters of its currency";

    /// <summary>What is in the field.</summary>
    public static RecordSheet Fleet { get; } = RecordSheet.Of(
        ("fleet.csv", "batch", "What the firm has in the field: a row for units of one model that were put in together. Either their day is written, and hours are counted from it, or their hours."),
        [
            new(new("site", CellKind.Text, "site", "job", "client site", "standort", "baustelle", "chantier"), "The site.", "a name", "Mill Row Dentists"),
            new(new("model", CellKind.Name, "model", "type", "device", "modell", "modèle"), "The model, as the catalogue calls it.", "a name", "alder"),
            new(new("units", CellKind.Count, "units", "qty", "quantity", "count", "pieces", "pcs", "anzahl", "stück", "quantité"), "How many were put in.", "a whole number between 0 and 1000000", "4"),
            new(new("place", CellKind.Text, "place", "room", "cupboard name", "closet", "rack", "raum", "schrank", "local"), "Where they stand at the site; wanted where a failure must tell two batches apart.", "a name", "upper cupboard"),
            new(new("installed", CellKind.Day, "installed", "installed on", "since", "date", "put in", "eingebaut", "installiert", "datum", "installé"), "The day they were put in.", ADay, "2022-03-14"),
            new(new("removed", CellKind.Day, "removed", "removed on", "until", "taken out", "retired", "ausgebaut", "retiré"), "The day they were taken out whole; empty while they are in service.", ADay, "2025-07-01"),
            new(new("hours", CellKind.Quantity, "hours", "service", "service hours", "betriebsstunden") { Units = Seconds.Units }, "Hours in service of all of them together, in place of the day; failed ones up to their failure.", "between 0.1 and 10000000000 h", "800 h"),
            new(new("powered", CellKind.Quantity, "powered", "powered share", "on time", "duty") { Units = Share.Units }, "The share of the time for which they are powered; all of it where nothing is written.", "above 0 and at most 100 %", "40 %"),
            new(new("air", CellKind.Quantity, "air", "cupboard", "cupboard temperature", "temperature", "temp", "ambient", "temperatur", "température") { Units = Celsius.Units }, "The air around them in an ordinary week.", "between -50 and 90 °C", "38 °C"),
        ],
        ["site"], ["model"], ["units"], ["installed", "hours"]);

    /// <summary>What failed.</summary>
    public static RecordSheet Failures { get; } = RecordSheet.Of(
        ("failures.csv", "failure", "What failed of it. Headings without a row say that nothing did; no file, that nobody knows."),
        [
            new(new("site", CellKind.Text, "site", "job", "client site", "standort", "baustelle", "chantier"), "The site, as in fleet.csv.", "a name", "Mill Row Dentists"),
            new(new("model", CellKind.Name, "model", "type", "device", "modell", "modèle"), "The model, as in fleet.csv.", "a name", "alder"),
            new(new("failed", CellKind.Day, "failed", "failed on", "date", "day", "on", "ausgefallen", "ausfall", "datum", "panne"), "The day it failed. Needed where its batch has a day.", "a day from that of its batch to the day of the study", "2024-08-02"),
            new(new("place", CellKind.Text, "place", "room", "cupboard name", "closet", "rack", "raum", "schrank", "local"), "The place, where a site has several batches of a model.", "a name", "upper cupboard"),
            new(new("installed", CellKind.Day, "installed", "installed on", "since", "put in", "eingebaut"), "The day its batch was put in, where place does not tell.", "the day of a batch", "2022-03-14"),
            new(new("replaced", CellKind.Day, "replaced", "replaced on", "swapped", "ersetzt", "remplacé"), "The day from which another of the same model stood in its place; empty when none did.", "a day from that of the failure to the day of the study", "2024-08-05"),
            new(new("units", CellKind.Count, "units", "qty", "quantity", "count", "pieces", "anzahl"), "How many failed that day; one where nothing is written.", "a whole number between 1 and 100000", "1"),
            new(new("air", CellKind.Quantity, "air", "cupboard", "cupboard temperature", "temperature", "temp", "temperatur") { Units = Celsius.Units }, "The air around it when it failed; hours and failures are both counted by that of the batch.", "between -50 and 90 °C", "41 °C"),
        ],
        ["site"], ["model"]);

    /// <summary>What lies on the shelf.</summary>
    public static RecordSheet Shelf { get; } = RecordSheet.Of(
        ("shelf.csv", "model", "What lies on the shelf, and how long a supplier takes: a row a model."),
        [
            new(new("model", CellKind.Name, "model", "type", "item", "article", "modell", "artikel", "modèle"), "The model.", "a name", "alder"),
            new(new("spares", CellKind.Count, "spares", "on the shelf", "shelf", "stock", "qty", "lager", "bestand", "stock"), "How many lie there.", "a whole number between 0 and 100000", "1"),
            new(new("supplier", CellKind.Quantity, "supplier", "lead", "lead time", "delivery", "delivery time", "lieferzeit", "délai") { Units = Seconds.Units }, "How long until a new one comes.", "between 1 h and 3 years", "14 d"),
            new(new("certainty", CellKind.Quantity, "certainty", "probability", "confidence", "sicherheit") { Units = Share.Units }, "The probability with which the shelf is to last until then; 95 % where nothing is written.", "between 50 and 99.99 %", "95 %"),
        ],
        ["model"], ["spares", "supplier"]);

    /// <summary>What was measured.</summary>
    public static RecordSheet Readings { get; } = RecordSheet.Of(
        ("readings.csv", "reading", "What was measured, of whichever quantity, beside what was predicted. Rows of watts with a model say what it draws; `--readings` of a study takes the same file."),
        [
            new(new("site", CellKind.Text, "site", "job", "client site", "standort", "baustelle", "chantier"), "The site.", "a name", "Mill Row Dentists"),
            new(new("what", CellKind.Name, "what", "quantity", "kind", "measurement", "größe", "messgröße", "grandeur"), "The quantity; where it is not written the unit tells it, if only one has it.", "one that a job's readings have", "temperature"),
            new(new("value", CellKind.Measured, "value", "measured", "reading", "result", "wert", "messwert", "valeur"), "The value, its interval behind it where the instrument has one.", "a value with its unit", "6.4 ± 0.2 W"),
            new(new("predicted", CellKind.Measured, "predicted", "prediction", "expected", "calculated", "vorhergesagt", "erwartet", "prévu"), "What was predicted there, with its interval.", "a value of the same quantity", "6.9 ± 0.5 W"),
            new(new("model", CellKind.Name, "model", "type", "device", "modell", "modèle"), "The model it was taken at.", "a name", "pipit"),
            new(new("at", CellKind.Text, "at", "place", "where", "point", "port", "location", "ort", "stelle", "lieu"), "The place.", "a name", "sw-1/5"),
            new(new("mode", CellKind.Text, "mode", "while", "state", "condition", "zustand"), "What was going on; of watts typical, peak, night, frost or start. Typical where nothing is written.", "words", "night"),
            new(new("with", CellKind.Text, "with", "instrument", "meter", "tester", "messgerät", "appareil"), "The instrument.", "a name", "plug meter"),
            new(new("calibrated", CellKind.Text, "calibrated", "kalibriert", "étalonné"), "Whether it is calibrated; readings of one that is not are left.", "yes or no", "yes"),
            new(new("at most", CellKind.Text, "at most", "upper bound"), "Whether the value is only known to be no more than this; such a row is compared with nothing.", "yes or no", "no"),
            new(new("on", CellKind.Day, "on", "date", "day", "datum", "tag", "jour"), "The day.", ADay, "2026-03-02"),
            new(new("unit", CellKind.Unit, "unit", "units", "einheit", "unité"), "The unit of value and prediction, where neither heading nor cell says it.", "a unit", "W"),
        ],
        ["site"], ["value"]);

    /// <summary>What jobs took.</summary>
    public static RecordSheet Hours { get; } = RecordSheet.Of(
        ("hours.csv", "job", "What jobs took and brought: a row a job. An empty cell is not known; where there was nothing, write 0."),
        [
            new(new("job", CellKind.Text, "job", "project", "site", "name", "auftrag", "projekt", "affaire"), "The job.", "a name, each once", "Mill Row Dentists"),
            new(new("on", CellKind.Day, "finished", "on", "date", "day", "done", "datum", "fertig"), "The day it was finished.", ADay, "2026-02-27"),
            Work("estimated", "Hours estimated.", "40 h", "estimated hours", "estimate", "geschätzt", "prévu"),
            Work("worked", "Hours worked, without those of coming back.", "46.5 h", "worked hours", "hours worked", "hours", "actual", "stunden", "heures"),
            Amount("hour cost", "What an hour costs the firm.", "34 EUR", "cost of an hour", "cost per hour", "stundensatz"),
            Amount("price", "The price as offered, without tax.", "4800 EUR", "offer", "net price", "offered", "angebot", "prix"),
            Amount("material", "What the goods cost in the end.", "2150 EUR", "goods", "goods cost", "materials", "ware"),
            Amount("variations", "What was charged for what was ordered on the way.", "310 EUR", "variation price", "variations charged", "extras", "nachträge"),
            Amount("variations cost", "What that cost besides hours.", "120 EUR", "variation cost", "extras cost"),
            Number("visits", "Times somebody went there, without those of coming back.", "6", "trips", "journeys", "fahrten"),
            Number("call-backs", "Times somebody had to come back.", "1", "call backs", "callbacks", "returns", "nacharbeiten"),
            Work("call-back hours", "Hours of coming back.", "3 h", "call back hours", "callback hours", "hours of call-backs"),
            Amount("visit cost", "What one way there and back costs besides its hours.", "22 EUR", "visit", "cost of a visit", "trip cost", "fahrtkosten"),
            new(new("unit", CellKind.Unit, "currency", "unit", "währung", "devise"), "The currency of the row, where neither heading nor cell says it.", "three letters", "EUR"),
        ],
        ["job"], ["estimated", "worked", "price"]);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<RecordSheet> All => [Fleet, Failures, Shelf, Readings, Hours];

    private static RecordColumn Work(string name, string doc, string example, params string[] words) =>
        new(new(name, CellKind.Quantity, words) { Units = Seconds.Units }, doc, "between 0 and 100000 h", example);

    private static RecordColumn Amount(string name, string doc, string example, params string[] words) => new(new(name, CellKind.Money, words), doc, AnAmount, example);

    private static RecordColumn Number(string name, string doc, string example, params string[] words) => new(new(name, CellKind.Count, words), doc, "a whole number between 0 and 10000", example);
}
