namespace Headroom.JobFiles.Fields;

/// <summary>Shapes that many fields share.</summary>
internal static class Shapes
{
    /// <summary>Any text.</summary>
    public static TextShape Text { get; } = new();

    /// <summary>A day.</summary>
    public static DateShape Day { get; } = new();

    /// <summary>Yes or no.</summary>
    public static WordShape<bool> Yes { get; } = new(("yes", true), ("no", false)) { Also = [("true", true), ("false", false)] };

    /// <summary>The name of something.</summary>
    public static NameShape Name(string of) => new(of);

    /// <summary>A word that is kept as it is; a hyphen is read as the word has it.</summary>
    public static WordShape<string> Words(params string[] words) => new(Array.ConvertAll(words, word => (word, word)));
}
