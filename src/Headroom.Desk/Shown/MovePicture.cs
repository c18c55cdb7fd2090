using Headroom.Documents.Canvas;

namespace Headroom.Desk.Shown;

/// <summary>A drawing on which things can be moved.</summary>
/// <param name="Key">The drawing on this page.</param>
/// <param name="Picture">The drawing.</param>
/// <param name="Svg">The drawing as a part of a page.</param>
/// <param name="Grips">What can be taken hold of.</param>
/// <param name="Places">Named places onto which things can be put.</param>
/// <param name="Notes">What is said about it.</param>
public sealed record MovePicture(string Key, Picture Picture, string Svg, IReadOnlyList<MoveGrip> Grips, IReadOnlyList<(string Name, Box Box)> Places, IReadOnlyList<string> Notes);
