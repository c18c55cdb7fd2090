using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Sheets;

/// <summary>The kinds of sheet that people keep, with the words by which they head their columns.</summary>
/// <remarks>The words are from memory and common practice, no source; whatever is missing is told by the list in the job.</remarks>
internal static class SheetKinds
{
    private static readonly SheetField Unit = new("unit", CellKind.Unit, "unit", "units", "einheit", "unité", "unite", "eenheid", "unidad", "unità", "unita", "currency", "währung", "devise", "valuta", "moneda");

    private static readonly SheetField[] Remarks =
    [
        new("remark", CellKind.Aside, "note", "notes", "remark", "remarks", "comment", "comments", "bemerkung", "bemerkungen", "notiz", "anmerkung", "remarque", "commentaire", "opmerking", "nota", "observaciones", "annotazioni"),
        new("number of the row", CellKind.Aside, "no", "no.", "nr", "nr.", "#", "row", "line", "lfd. nr.", "lfd nr", "pos", "pos."),
        new("serial number", CellKind.Aside, "serial", "serial number", "serial no", "s/n", "sn", "seriennummer", "numéro de série", "serienummer"),
    ];

    private static readonly SheetField Room = new("to", CellKind.Name, "room", "to", "to room", "space", "location", "raum", "zimmer", "nach", "ort", "standort", "pièce", "piece", "salle", "local", "vers", "ruimte", "kamer", "naar", "sala", "habitación", "hasta", "stanza", "locale");

    private static readonly SheetField DropName = new("drop", CellKind.Name, "drop", "outlet", "drop id", "outlet id", "cable id", "cable no", "cable no.", "cable number", "socket", "jack", "point", "data point", "dose", "datendose", "anschluss", "kabelnummer", "kabel-nr", "kabel-nr.", "kabel nr", "prise", "contactdoos", "aansluiting", "toma", "presa");

    /// <summary>Outlets with their cables.</summary>
    public static SheetKind Drops { get; } = new(
        "drops",
        "drop",
        [
            DropName with { Words = [.. DropName.Words, "id", "name"] },
            new("from", CellKind.Name, "from", "from room", "closet", "cupboard", "start", "von", "verteiler", "schrank", "de", "depuis", "baie", "van", "kast", "desde", "armario", "da", "armadio"),
            Room,
            new("length", CellKind.Quantity, "length", "cable length", "run", "run length", "len", "metres", "meters", "länge", "laenge", "kabellänge", "leitungslänge", "longueur", "lengte", "kabellengte", "longitud", "lunghezza", "længde", "längd") { Units = Metres.Units, AddsUp = true, IsAsked = true },
            new("cable", CellKind.Name, "cable", "cable type", "cable model", "type", "category", "cat", "kabel", "kabeltyp", "câble", "cable tipo", "kabeltype", "tipo de cable", "cavo", "tipo cavo") { IsAsked = true },
            new("ambient", CellKind.Quantity, "ambient", "temperature", "air", "temp", "temperatur", "umgebung", "température", "temperatuur", "temperatura") { Units = Celsius.Units },
            new("bundle", CellKind.Count, "bundle", "bundle size", "cables in bundle", "bündel", "buendel", "faisceau", "bundel", "mazo", "fascio"),
            new("by", CellKind.Name, "by", "pathway", "route", "way", "conduit", "tray", "weg", "trasse", "chemin", "kabelgoot", "ruta", "percorso"),
            new("panel cord", CellKind.Text, "panel cord", "patch cord", "patchkabel", "cord at panel"),
            new("device cord", CellKind.Text, "device cord", "cord at device", "anschlusskabel"),
            Unit,
            new("device", CellKind.Aside, "device", "endpoint", "equipment", "gerät", "geraet", "appareil", "apparaat", "equipo", "apparecchio"),
            new("port", CellKind.Aside, "switch", "port", "switch port", "panel", "panel port", "patchfeld", "panneau"),
            new("test result", CellKind.Aside, "tested", "result", "result id", "test", "initials", "geprüft"),
            .. Remarks,
        ],
        [["drop"], ["from"]]) { Key = "drop", Section = ["survey", "drops"] };

    /// <summary>What is connected.</summary>
    public static SheetKind Endpoints { get; } = new(
        "endpoints",
        "endpoint",
        [
            new("endpoint", CellKind.Name, "endpoint", "device", "device name", "name", "id", "label", "equipment", "gerät", "geraet", "gerätename", "bezeichnung", "appareil", "apparaat", "equipo", "apparecchio"),
            new("model", CellKind.Name, "model", "type", "device type", "item", "article", "modell", "typ", "artikel", "modèle", "modele", "modelo", "modello"),
            DropName,
            new("near", CellKind.Name, "near", "room", "space", "location", "raum", "zimmer", "ort", "standort", "pièce", "salle", "ruimte", "sala", "habitación", "stanza"),
            new("mode", CellKind.Name, "mode", "state", "zustand", "betriebsart"),
            Draw("typical", "typical", "typ. watts", "usual draw", "watts", "power", "draw", "consumption", "leistung", "verbrauch", "puissance", "vermogen", "potencia", "potenza"),
            Draw("peak", "peak", "max", "maximum", "max. watts", "max watts", "peak power", "max power", "spitze", "höchstleistung", "puissance max"),
            Draw("start", "start", "start-up", "startup", "boot", "anlauf"),
            Draw("night", "night", "ir", "night mode", "nacht", "nuit", "notte", "noche"),
            Draw("frost", "frost", "heater", "heizung", "chauffage"),
            new("hardware", CellKind.Hardware, "hardware", "hardware address", "mac", "mac address", "mac-address", "mac addr", "mac-adresse", "hardwareadresse", "adresse mac", "mac-adres", "dirección mac", "indirizzo mac"),
            new("count", CellKind.Count, "count", "qty", "quantity", "number", "pieces", "pcs", "anzahl", "menge", "stück", "stk", "quantité", "qté", "aantal", "cantidad", "quantità"),
            Unit,
            new("port", CellKind.Aside, "switch", "port", "switch port", "panel", "panel port", "patch", "cord"),
            .. Remarks,
            new("network address", CellKind.Aside, "ip", "ip address", "address", "vlan", "hostname", "ip-adresse", "description", "beschreibung", "firmware", "bought", "warranty", "installed", "poe"),
        ],
        [["endpoint", "count"], ["model"]]) { Key = "endpoint", Section = ["survey", "endpoints"] };

    /// <summary>What is plugged in where.</summary>
    public static SheetKind Patching { get; } = new(
        "patching",
        "cord",
        [
            DropName with { Words = [.. DropName.Words, "patch", "id"] },
            new("device", CellKind.Name, "device", "endpoint", "equipment", "gerät", "geraet", "appareil", "apparaat", "equipo", "apparecchio"),
            new("switch", CellKind.Name, "switch", "unit", "switch name", "commutateur", "conmutador"),
            new("port", CellKind.Port, "port", "switch port", "port no", "port no.", "port number", "portnummer", "poort", "puerto", "porta") { IsAsked = true },
            new("panel", CellKind.Aside, "panel", "panel port", "patchfeld", "panneau", "room", "raum", "cord", "cord length", "colour", "color", "speed", "vlan", "poe", "class", "limit", "priority", "description", "beschreibung", "cable", "length", "name", "ip", "address", "hostname"),
            .. Remarks,
        ],
        [["drop", "device"], ["port"]]) { Key = "drop", Section = ["patch"] };

    /// <summary>What goods cost.</summary>
    public static SheetKind Prices { get; } = new(
        "prices",
        "price",
        [
            new("model", CellKind.Name, "model", "item", "article", "product", "name", "modell", "artikel", "produkt", "article no", "produit", "producto", "articolo", "artículo"),
            new("cost", CellKind.Money, "cost", "price", "net", "net price", "unit price", "amount", "preis", "einkauf", "ek", "netto", "einzelpreis", "prix", "prix net", "prijs", "precio", "prezzo", "costo"),
            new("supplier", CellKind.Text, "supplier", "vendor", "source", "lieferant", "fournisseur", "leverancier", "proveedor", "fornitore"),
            new("on", CellKind.Day, "date", "day", "as of", "valid from", "on", "datum", "stand", "date du", "fecha", "data"),
            new("list", CellKind.Text, "list", "price list", "preisliste", "liste", "lista"),
            Unit,
            .. Remarks,
        ],
        [["model"], ["cost"]]) { Section = ["prices"] };

    /// <summary>What was measured.</summary>
    public static SheetKind Readings { get; } = new(
        "readings",
        "reading",
        [
            new("what", CellKind.Name, "quantity", "what", "kind", "measurement", "measured", "größe", "groesse", "messgröße", "grandeur", "grootheid", "magnitud", "grandezza"),
            new("at", CellKind.Name, "place", "at", "where", "point", "location", "drop", "port", "ort", "stelle", "messstelle", "lieu", "plaats", "lugar", "luogo"),
            new("value", CellKind.Measured, "value", "reading", "result", "wert", "messwert", "valeur", "mesure", "waarde", "valor", "valore"),
            new("with", CellKind.Text, "instrument", "with", "meter", "tester", "gerät", "messgerät", "appareil", "meetinstrument", "instrumento", "strumento"),
            new("calibrated", CellKind.Text, "calibrated", "kalibriert", "étalonné"),
            new("at most", CellKind.Text, "at most", "upper bound"),
            new("on", CellKind.Day, "date", "day", "on", "datum", "tag", "jour", "dag", "fecha", "data"),
            new("while", CellKind.Text, "condition", "conditions", "while", "state", "bedingung", "zustand", "état", "toestand", "condición", "condizione"),
            new("background", CellKind.Quantity, "background", "hintergrund", "bruit de fond", "achtergrond", "fondo") { Units = SoundPressure.Units },
            new("distance", CellKind.Quantity, "distance", "abstand", "entfernung", "afstand", "distancia", "distanza") { Units = Metres.Units },
            new("method", CellKind.Text, "method", "verfahren", "méthode", "methode", "método", "metodo"),
            new("direction", CellKind.Text, "direction", "richtung", "sens", "richting", "dirección", "direzione"),
            new("pair", CellKind.Text, "pair", "paar", "paire", "par", "coppia"),
            Unit,
            .. Remarks,
        ],
        [["at"], ["value"]]) { Section = ["readings"] };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SheetKind> All { get; } = [Drops, Endpoints, Patching, Prices, Readings];

    /// <summary>The kind of a word; null when there is none.</summary>
    public static SheetKind? Find(string word) => All.FirstOrDefault(kind => kind.Name == word);

    private static SheetField Draw(string name, params string[] words) => new(name, CellKind.Quantity, words) { Units = Watts.Units, AddsUp = true, IsAsked = true };
}
