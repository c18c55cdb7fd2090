namespace Headroom.JobFiles.Tests.Fuzz;

/// <summary>Texts that are nearly right: good ones, a few times cut, put together otherwise, or with something put in.</summary>
internal sealed class Mutations(string[] good, string[] pieces, int start)
{
    private readonly Random _random = new(start);

    /// <summary>The next text.</summary>
    public string Next()
    {
        var text = good[_random.Next(good.Length)];
        for (var times = _random.Next(1, 6); times > 0; times--)
            text = Changed(text);
        return text;
    }

    private string Changed(string text)
    {
        var at = _random.Next(text.Length + 1);
        var end = Math.Min(text.Length, at + _random.Next(24));
        return _random.Next(7) switch
        {
            0 => text[..at] + text[end..],
            1 => text[..at] + pieces[_random.Next(pieces.Length)] + text[at..],
            2 => text[..at] + pieces[_random.Next(pieces.Length)] + text[end..],
            3 => text[..at] + text[at..end] + text[at..end] + text[end..],
            4 => text[..at] + (char)_random.Next(0x20, 0x250) + text[Math.Min(text.Length, at + 1)..],
            5 => text[..at],
            _ => text[..at] + Line(good[_random.Next(good.Length)]) + text[at..],
        };
    }

    private string Line(string text)
    {
        var lines = text.Split('\n');
        return lines[_random.Next(lines.Length)] + "\n";
    }
}
