using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Documents.Letters;
using Headroom.Domain.Jobs;
using Headroom.Domain.Shown;
using Headroom.Engineering.Binding;

namespace Headroom.Documents.Drawings;

/// <summary>The ports of a switch as they are on its front: odd ones above even ones, twelve pairs in a row, each with what hangs on it.</summary>
public static class PortFront
{
    private const int Columns = 12;
    private const double CellWidth = 58;
    private const double CellHeight = 42;
    private const double Air = 2.5;
    private const double BankGap = 5;

    private static readonly Lettering Number = new(Face.Strong, 7.5);
    private static readonly Lettering Device = new(Face.Strong, 8);
    private static readonly Lettering Small = new(Face.Plain, 6.5);

    /// <summary>Draws a switch.</summary>
    /// <param name="bound">The design it is in.</param>
    /// <param name="unit">The switch.</param>
    /// <param name="scale">How many times as large.</param>
    /// <returns>The picture.</returns>
    public static Picture Of(BoundDesign bound, BoundSwitch unit, double scale)
    {
        var whole = Of(bound, unit);
        return scale == 1 ? whole : new Picture(whole.Title, whole.Width * scale, whole.Height * scale, (canvas, at) => whole.Draw(new ScaledCanvas(canvas, at, scale), new(0, 0)));
    }

    /// <summary>In how many rows of pairs its ports stand.</summary>
    /// <param name="unit">The switch.</param>
    public static int BanksOf(BoundSwitch unit) => (Ports(unit).Count + Columns * 2 - 1) / (Columns * 2);

    private static List<int> Ports(BoundSwitch unit) => [.. unit.Model.Ports.SelectMany(group => Enumerable.Range(group.First, group.Last - group.First + 1)).Distinct().Order()];

    private static Picture Of(BoundDesign bound, BoundSwitch unit)
    {
        var ports = Ports(unit);
        var banks = ports.Chunk(Columns * 2).ToList();
        var bankHeight = 2 * CellHeight + BankGap;
        return new Picture($"The ports of {unit.Id}", Columns * CellWidth, banks.Count * bankHeight - BankGap, (canvas, at) =>
        {
            for (var i = 0; i < ports.Count; i++)
            {
                var (bank, column, below) = (i / (Columns * 2), i % (Columns * 2) / 2, i % 2);
                Port(canvas, new(at.X + column * CellWidth, at.Y + bank * bankHeight + below * CellHeight, CellWidth, CellHeight), What(bound, unit, ports[i]));
            }
        });
    }

    private static (string Port, string Device, string Cable, string Room, bool Powered) What(BoundDesign bound, BoundSwitch unit, int port)
    {
        var group = unit.PortGroupOf(port)!;
        var powered = group.Poe is not null || group.Passive is not null;
        var on = bound.Endpoints.FirstOrDefault(endpoint => endpoint.Port is { Switch: { } its } patch && its.Id == unit.Id && patch.Port == port);
        var loose = bound.LooseDrops.FirstOrDefault(patch => patch.Switch?.Id == unit.Id && patch.Port == port);
        var link = (bound.Design.Uplinks ?? []).FirstOrDefault(uplink => Is(uplink.From, unit, port) || Is(uplink.To, unit, port));
        var injector = bound.Injectors.FirstOrDefault(one => one.Placed.From.Any(from => Is(from, unit, port)));
        var device = on?.Id ?? (link is not null ? $"to {(Is(link.From, unit, port) ? link.To : link.From)}" : injector is not null ? $"to {injector.Id}" : "");
        return (Numbers.Show(port), device, on?.Endpoint.Drop ?? loose?.What ?? link?.Drop ?? "", on?.Run?.Drop.To ?? on?.Endpoint.Near ?? "", powered);
    }

    private static bool Is(PortRef at, BoundSwitch unit, int port) => at.Unit == unit.Id && at.Port == port;

    private static void Port(ICanvas canvas, Box box, (string Port, string Device, string Cable, string Room, bool Powered) what)
    {
        canvas.Rect(box, new Look(Stroke.Thin, what.Powered ? Ink.Paper : Ink.Fill));
        var (left, y) = (box.X + Air, box.Y + Air);
        canvas.Text(what.Port, new(left, y + Number.Size), Number);
        var room = box.Width - 3 * Air - Typeface.Width(what.Port, Number);
        canvas.Text(Fitted(what.Cable, Small, room).Text, new(box.Right - Air, y + Number.Size), Fitted(what.Cable, Small, room).Lettering with { Anchor = Anchor.End });
        y += Number.Lead + 0.5;
        foreach (var line in TextWrap.Lines(what.Device, Device, box.Width - 2 * Air).Take(2))
        {
            canvas.Text(line, new(left, y + Device.Size), Device);
            y += Device.Size * 1.1;
        }

        var (place, lettering) = Fitted(what.Room, Small, box.Width - 2 * Air);
        canvas.Text(place, new(left, box.Bottom - Air - 0.5), lettering);
    }

    // What is too long becomes smaller; nothing is cut off.
    private static (string Text, Lettering Lettering) Fitted(string text, Lettering lettering, double room)
    {
        var width = Typeface.Width(text, lettering);
        return (text, width <= room ? lettering : lettering with { Size = lettering.Size * room / width });
    }
}
