namespace Headroom.Desk.Shown;

/// <summary>A row of a ledger with its bar.</summary>
/// <param name="Row">The words and figures.</param>
/// <param name="Unit">The unit of what is asked and there is.</param>
/// <param name="Remarks">What interval or overruling adds.</param>
public sealed record LedgerLine(KeptRow Row, string Unit, IReadOnlyList<string> Remarks)
{
    private Func<string>? _draw;

    /// <summary>The bar as a drawing, made when it is first asked for; empty where a question stands in its place.</summary>
    public string Bar => field ??= _draw?.Invoke() ?? "";

    /// <summary>The same row with a bar.</summary>
    /// <param name="draw">Makes the drawing; the same each time.</param>
    internal LedgerLine With(Func<string> draw)
    {
        _draw = draw;
        return this;
    }
}
