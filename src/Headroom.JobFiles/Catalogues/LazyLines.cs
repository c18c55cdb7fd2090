namespace Headroom.JobFiles.Catalogues;

/// <summary>Cuts a shipped file into one block of lines for each model, by depth alone.</summary>
internal sealed class LazyLines
{
    /// <summary>How deep the names of models lie.</summary>
    public const int Depth = 2;

    private readonly List<Block> _blocks = [];
    private (string Id, int Line, int Start)? _open;

    /// <summary>Cuts the text.</summary>
    public LazyLines(string text)
    {
        var start = 0;
        for (var line = 1; start < text.Length; line++)
        {
            var end = text.IndexOf('\n', start) + 1;
            end = end == 0 ? text.Length : end;
            Look(text, (start, end), line);
            start = end;
        }

        Close(text, text.Length);
    }

    /// <summary>The one kind of model in the file; null when there is none or there are several.</summary>
    public string? Kind { get; private set; }

    /// <summary>False when the file is not built as the shipped ones are: a line for each name, deeper lines for its keys.</summary>
    public bool IsPlain { get; private set; } = true;

    /// <summary>The blocks, in the order written.</summary>
    public IReadOnlyList<Block> Blocks => _blocks;

    private void Look(string text, (int Start, int End) at, int line)
    {
        var content = text.AsSpan(at.Start, at.End - at.Start).TrimEnd();
        var depth = content.Length - content.TrimStart(' ').Length;
        if (content.IsEmpty || depth > Depth || content[depth] == '#')
            return;
        if (depth == Depth && content.IndexOf(" #") is var remark and > 0)
            content = content[..remark].TrimEnd();
        if (depth == Depth && Kind is not null && content[^1] == ':')
            Open(text, (content[Depth..^1].ToString(), line, at.Start));
        else if (depth == 0 && content[^1] == ':' && Kind is null)
            Kind = content[..^1].ToString();
        else
            IsPlain &= depth == 0 && Kind is null && (content.StartsWith("catalogue: ") || content.StartsWith("about: "));
    }

    private void Open(string text, (string Id, int Line, int Start) block)
    {
        Close(text, block.Start);
        IsPlain &= Fields.NameShape.IsName(block.Id) && _blocks.TrueForAll(before => before.Id != block.Id);
        _open = block;
    }

    private void Close(string text, int end)
    {
        if (_open is { } open)
            _blocks.Add(new Block(open.Id, open.Line, text, (open.Start, end)));
        _open = null;
    }

    /// <summary>The lines of one model.</summary>
    internal sealed record Block(string Id, int Line, string Whole, (int Start, int End) Span)
    {
        /// <summary>The text of the lines, the name in front.</summary>
        public string Text => Whole[Span.Start..Span.End];
    }
}
