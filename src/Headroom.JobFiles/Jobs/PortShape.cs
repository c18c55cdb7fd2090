using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>A port as <c>sw-1/5</c>, a range of ports as <c>sw-1/5..8</c>, or a unit that has but one: <c>inj-1</c>.</summary>
internal sealed class PortShape : ScalarShape<IReadOnlyList<PortRef>>
{
    /// <summary>True when a range may be written.</summary>
    public bool Many { get; init; }

    /// <inheritdoc/>
    public override string InWords => "a port, as unit/number such as sw-1/5" + (Many ? ", or several as sw-1/5..8" : "");

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) =>
        SchemaParts.Pattern($"^({NameShape.Pattern}(/[0-9]{{1,3}}{(Many ? "([.][.][0-9]{1,3})?" : "")})?|{SchemaParts.Unknown})$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out IReadOnlyList<PortRef> value)
    {
        value = null;
        var slash = scalar.Text.IndexOf('/');
        var unit = (slash < 0 ? scalar.Text : scalar.Text[..slash]).Trim();
        if (!NameShape.IsName(unit))
            return Refuse(Slips.NotAPort, scalar, reader);
        value = slash < 0 ? [new PortRef(unit, null)] : Ports(unit, scalar.Text[(slash + 1)..]);
        if (value is null || (value.Count > 1 && !Many))
            return Refuse(Slips.NotAPort, scalar, reader, $"write it like '{reader.Example}', with a number from 1 to {PortNumbers.Most}");
        return true;
    }

    private static List<PortRef>? Ports(string unit, string numbers) =>
        PortNumbers.Read(numbers) is { } range ? [.. range.Numbers().Select(port => new PortRef(unit, port))] : null;
}
