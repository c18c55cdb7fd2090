using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Links between switches and to the line.</summary>
internal static class UplinkFields
{
    private static readonly Field<IReadOnlyList<PortRef>> From = new("from", new PortShape(), "The port it leaves from.", "sw-1/25") { IsRequired = true };
    private static readonly Field<IReadOnlyList<PortRef>> To = new("to", new PortShape(), "The port of another switch, or a name such as line for what lies outside.", "sw-2/25") { IsRequired = true };
    private static readonly Field<string> Media = new("media", Shapes.Words("copper", "fibre", "direct"), "What it runs on.", "fibre");
    private static readonly Field<string> Module = new("module", Shapes.Name("a module model"), "The pluggable module, at both ends unless the far one is another.", "lamp-sr");
    private static readonly Field<string> FarModule = new("far module", Shapes.Name("a module model"), "The module at the far end, where it is another.", "lamp-sr");
    private static readonly Field<string> Drop = new("drop", Shapes.Name("a drop"), "The drop or backbone cable it runs on.", "B-1");

    /// <summary>An uplink.</summary>
    public static ObjectShape<Uplink> Shape { get; } = new("uplink", [From, To, Media, Module, FarModule, Drop], values =>
        new Uplink(values.Must(From)[0], values.Must(To)[0], values.Get(Media), values.Get(Module), values.Get(Drop), values.At)
        {
            FarModule = values.Get(FarModule),
        });
}
