using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Files;

/// <summary>Turns rising indexes of a text into places, without starting from the top each time.</summary>
internal sealed class LineWalk(string text, Place first)
{
    private int _index;
    private int _line = first.Line;
    private int _lineStart = 1 - first.Column;

    /// <summary>The place of an index that is not below the one asked for before.</summary>
    public Place To(int index)
    {
        for (; _index < index; _index++)
        {
            if (text[_index] != '\n' && (text[_index] != '\r' || (_index + 1 < text.Length && text[_index + 1] == '\n')))
                continue;
            _line++;
            _lineStart = _index + 1;
        }

        return new Place(first.File, _line, index - _lineStart + 1);
    }
}
