using Headroom.Desk.Shown;
using Headroom.Desk.Work;

namespace Headroom.Desk.Moving;

/// <summary>A part of a job whose things are moved on a drawing.</summary>
internal interface IMoveBoard
{
    /// <summary>The end of its address.</summary>
    string Path { get; }

    /// <summary>The query of its address; empty for none.</summary>
    string Query { get; }

    /// <summary>The things, with what the job says of them.</summary>
    /// <param name="on">The job as it is saved.</param>
    IReadOnlyList<MoveThing> Things(MoveBase on);

    /// <summary>What is to be changed in the text of the job.</summary>
    /// <param name="on">The job as it is saved.</param>
    /// <param name="things">The things as the job has them, and with what the fields are to say.</param>
    /// <param name="draft">What was moved before.</param>
    MoveChanges Changes(MoveBase on, (IReadOnlyList<MoveThing> Saved, IReadOnlyList<MoveThing> Now) things, Draft draft);

    /// <summary>Values that fields may take, by the name of the list.</summary>
    /// <param name="studied">What is drawn.</param>
    IReadOnlyDictionary<string, IReadOnlyList<(string Value, string About)>> Lists(StudiedDesign studied);

    /// <summary>The drawings with what can be taken hold of.</summary>
    /// <param name="studied">What is drawn.</param>
    /// <param name="things">The things.</param>
    IReadOnlyList<MovePicture> Pictures(StudiedDesign studied, IReadOnlyList<MoveThing> things);
}
