using System.Text;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>What the paper at hand can bear: signs beyond ASCII or not, colour or not. Every text goes through it before it is measured.</summary>
internal sealed record Pen(bool Unicode, bool Colour)
{
    /// <summary>The width every sheet keeps to, in columns.</summary>
    public const int Columns = 80;

    // Signs that our own texts use, with what stands for them where only ASCII is understood.
    private static readonly Dictionary<char, string> Stand = new()
    {
        ['·'] = "-", ['…'] = "...", ['–'] = "-", ['—'] = "-", ['−'] = "-", ['±'] = "+/-", ['×'] = "x", ['°'] = "deg ", ['µ'] = "u", ['μ'] = "u",
        ['Ω'] = "ohm", ['√'] = "sqrt", ['²'] = "2", ['³'] = "3", ['≤'] = "<=", ['≥'] = ">=", ['≈'] = "~", ['→'] = "->", ['Δ'] = "d", ['ρ'] = "rho",
        ['α'] = "alpha", ['η'] = "eta", ['π'] = "pi", ['½'] = "1/2", ['‘'] = "'", ['’'] = "'", ['“'] = "\"", ['”'] = "\"",
    };

    // 256-colour codes nearest to the rust and ochre of the sheets that are still read on black and on white paper.
    private const string Rust = "\u001b[38;5;166m";
    private const string Ochre = "\u001b[38;5;136m";
    private const string Plainly = "\u001b[0m";

    /// <summary>The signs a bar is drawn with.</summary>
    public BarSigns Bar => Unicode ? BarSigns.Drawn : BarSigns.Typed;

    /// <summary>What ends a text that was cut.</summary>
    public string Cut => Unicode ? "…" : "...";

    /// <summary>The mark of a verdict, one column wide.</summary>
    public string Mark(Verdict verdict) => (verdict, Unicode) switch
    {
        (Verdict.Short, true) => "✕",
        (Verdict.Short, false) => "x",
        (Verdict.Tight, true) => "△",
        (Verdict.Tight, false) => "^",
        (Verdict.Clear, true) => "·",
        (Verdict.Clear, false) => ".",
        _ => "?",
    };

    /// <summary>The text in the signs at hand; control characters, which could steer a terminal, become spaces.</summary>
    public string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var sign in text)
        {
            if (char.IsControl(sign))
                plain.Append(' ');
            else if (!Unicode && Stand.TryGetValue(sign, out var stand))
                plain.Append(stand);
            else
                plain.Append(sign);
        }

        return plain.ToString();
    }

    /// <summary>The text in the colour of a verdict, where there is colour.</summary>
    public string Ink(Verdict verdict, string text) => (Colour, verdict) switch
    {
        (true, Verdict.Short) => Rust + text + Plainly,
        (true, Verdict.Tight) => Ochre + text + Plainly,
        _ => text,
    };
}
