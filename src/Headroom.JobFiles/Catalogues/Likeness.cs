using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Completes models that only say what differs from another.</summary>
internal static class Likeness
{
    /// <summary>The keys of a model with everything it takes over; null when its line of likeness is broken, with a finding where a reader is given.</summary>
    public static YamlNode? Whole(ModelKind kind, IReadOnlyDictionary<string, RawModel> raw, string id, FieldReader? reader)
    {
        var line = new List<RawModel>();
        var model = raw.GetValueOrDefault(id);
        while (model?.Node is { } node)
        {
            line.Add(model);
            if ((node as YamlMap)?.Find("like")?.Value is not YamlScalar { IsEmpty: false, IsUnknown: false } like)
                return line.Select(one => one.Node!).Reverse().Aggregate((under, over) => kind.Complete(under, over));
            model = like.Text == model.Id ? model.Under : raw.GetValueOrDefault(like.Text);
            if (model is null)
                RefuseUnknown(kind, raw, like, reader);
            else if (line.Contains(model))
                return RefuseRing(kind, like, reader);
        }

        return null;
    }

    private static void RefuseUnknown(ModelKind kind, IReadOnlyDictionary<string, RawModel> raw, YamlScalar from, FieldReader? reader)
    {
        reader?.Refuse(ModelSlips.UnknownLike, from.At, $"{reader.Name} is like '{Words.Short(from.Text)}'", $"the name of {Words.A(kind.Noun)} of the catalogue", reader.Meant(from.Text, raw.Keys, "write the model out, or name one that is there"));
    }

    private static YamlNode? RefuseRing(ModelKind kind, YamlScalar from, FieldReader? reader)
    {
        reader?.Refuse(ModelSlips.LikeRing, from.At, $"{reader.Name} comes back to itself over 'like: {Words.Short(from.Text)}'", $"a line that ends with {Words.A(kind.Noun)} written out", "write one of them out");
        return null;
    }
}
