using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>Lets the word <c>none</c> stand in place of a thing.</summary>
internal static class Removable
{
    /// <summary>A shape that also takes the word <c>none</c>.</summary>
    public static Shape<OrNone<T>> Of<T>(Shape<T> shape)
        where T : class => new EitherShape<OrNone<T>>(
            (node => node is YamlScalar { Text: "none" }, new As<string, OrNone<T>>(Shapes.Words("none"), (_, _) => new OrNone<T>((T?)null))),
            (_ => true, new As<T, OrNone<T>>(shape, (thing, _) => new OrNone<T>(thing))));
}
