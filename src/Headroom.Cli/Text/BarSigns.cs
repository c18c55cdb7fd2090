namespace Headroom.Cli.Text;

/// <summary>The signs of a bar: what is committed, what may come, what lies beyond the limit, and the marks on the axis.</summary>
internal sealed record BarSigns(char Asked, char Peak, char Beyond, char Free, char Reserve, char Limit, char Measured, char Broken)
{
    /// <summary>The signs for a terminal that knows them.</summary>
    public static BarSigns Drawn { get; } = new('█', '▒', '▓', '─', '╷', '┃', '○', '≈');

    /// <summary>The signs for one that does not.</summary>
    public static BarSigns Typed { get; } = new('#', '=', '%', '-', '+', '|', 'o', '~');
}
