using System.Text.Json.Nodes;

namespace Headroom.JobFiles.Fields;

/// <summary>What may stand in a place of a file. Check, message, schema and manual all come from it.</summary>
internal abstract class Shape
{
    /// <summary>What is allowed, in words that follow "is": <c>a length between 0.1 and 2000 m</c>.</summary>
    public abstract string InWords { get; }

    /// <summary>True when nothing written is an answer too.</summary>
    public virtual bool TakesNothing => false;

    /// <summary>True when each thing inside is told by its own name, so that the key above it need not be told.</summary>
    public virtual bool NamesItself => false;

    /// <summary>True when it is one text and never a list or a map.</summary>
    public virtual bool IsScalar => false;

    /// <summary>The shapes inside, for the manual.</summary>
    public virtual IEnumerable<Shape> Parts => [];

    /// <summary>What it is for a program that checks or completes files.</summary>
    public abstract JsonObject Schema(SchemaParts parts);
}
