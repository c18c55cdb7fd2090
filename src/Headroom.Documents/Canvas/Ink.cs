namespace Headroom.Documents.Canvas;

/// <summary>What something is drawn in. The papers have few colours, and each means one thing.</summary>
public enum Ink
{
    /// <summary>Words, figures and what is there.</summary>
    Ink,

    /// <summary>Labels, never figures.</summary>
    Soft,

    /// <summary>Hairlines that divide.</summary>
    Rule,

    /// <summary>Ground that sets something apart.</summary>
    Fill,

    /// <summary>Beyond a limit.</summary>
    Rust,

    /// <summary>Inside a limit but not its reserve, and cautions.</summary>
    Ochre,

    /// <summary>The sheet itself, to keep something free.</summary>
    Paper,

    /// <summary>Black, for codes and for what printers of labels know alone.</summary>
    Black,

    /// <summary>The firm's own colour on what it hands over; ink where it has none.</summary>
    House,
}
