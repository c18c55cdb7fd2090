using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Jobs;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Drawings.Rooms;

/// <summary>What stands in a room, who listens there and what was read: devices solid, ears as crosses, readings as open circles.</summary>
internal sealed class RoomThings(Plate plate, PaperInput input, Space space, RoomFrame frame)
{
    private const double Half = 3;
    private const double RackMetres = 0.4826;
    private const double MostLabel = 130;

    private readonly List<(string Text, Spot At, Lettering Lettering)> _labels = [];
    private readonly List<string> _unlabelled = [];

    /// <summary>Labels for which there was no place.</summary>
    public IReadOnlyList<string> Unlabelled => _unlabelled;

    /// <summary>Draws all shapes and keeps their places free.</summary>
    public void Shapes()
    {
        foreach (var screen in input.Job.Survey.Screens.Where(screen => screen.In == space.Id))
            Edge(screen);
        foreach (var rack in input.Job.Survey.Racks.Where(rack => rack.In == space.Id))
            Rack(rack);
        foreach (var source in input.Results.Sound.Sources.Where(source => source.Space == space.Id && source.Rack is null && source.Spot is not null))
            Device(source.Id, frame.At(source.Spot!.Value));
        foreach (var listener in input.Results.Sound.Listeners.Where(one => one.Listener.In == space.Id && one.Listener.Spot is not null))
            Ear(listener);
    }

    /// <summary>Writes the labels where there is room.</summary>
    public void Labels()
    {
        foreach (var (text, at, lettering) in _labels)
        {
            if (!LabelPlacer.Label(plate, plate.Fit(text, lettering, MostLabel), at, lettering, frame.Inside.Inset(1)))
                _unlabelled.Add($"{text}: no room for its label in the plan.");
        }
    }

    private void Edge(Screen screen)
    {
        var (from, to) = (frame.At(screen.From.Value), frame.At(screen.To.Value));
        plate.Line(from, to, Stroke.Heavy);
        plate.ReserveLine(from, to);
        _labels.Add(($"{screen.Id}, {screen.Kind}", new((from.X + to.X) / 2, (from.Y + to.Y) / 2), Marks.Soft));
    }

    private void Rack(Rack rack)
    {
        if (rack.Spot is not { } spot)
            return;
        var (middle, width, depth) = (frame.At(spot.Value), frame.Scale.Points(RackMetres), frame.Scale.Points(rack.Depth?.Value.Value ?? RackMetres));
        var box = new Box(middle.X - width / 2, middle.Y - depth / 2, width, depth);
        plate.Rect(box, new Look(new Stroke(Ink.Ink, 0.9), Ink.Fill));
        plate.Line(new(box.X, box.Y), new(box.Right, box.Bottom), new Stroke(Ink.Ink, 0.4));
        plate.Reserve(box);
        _labels.Add(($"rack {rack.Id}", new(box.Right, middle.Y), Marks.Name));
    }

    private void Device(string id, Spot at)
    {
        var box = new Box(at.X - Half, at.Y - Half, 2 * Half, 2 * Half);
        plate.Rect(box, Look.Solid(Ink.Ink));
        plate.Reserve(box);
        _labels.Add((id, at, Marks.Name));
    }

    private void Ear(Headroom.Engineering.Acoustics.ListenerSound listener)
    {
        var at = frame.At(listener.Listener.Spot!.Value);
        plate.Line(at.By(-5, 0), at.By(5, 0), new Stroke(Ink.Ink, 1.1));
        plate.Line(at.By(0, -5), at.By(0, 5), new Stroke(Ink.Ink, 1.1));
        plate.Reserve(new Box(at.X - 5, at.Y - 5, 10, 10));
        if (listener.Readings.Count > 0)
            plate.Circle(at, 3.2, new Look(new Stroke(Ink.Ink, 0.9), Ink.Paper));
        _labels.Add((listener.Listener.Id, at, Marks.Name));
        var entry = input.Ledger.Entries.FirstOrDefault(one => one.Subject == listener.Listener.Id && one.Unit == "dB(A)");
        var half = entry?.PlusMinus is { } interval ? $" ± {Numbers.Show(Math.Round(interval, 1))}" : "";
        _labels.Add((listener.Total is { } total ? $"{Numbers.Show(Math.Round(total.Value, 1))}{half} dB(A)" : "level not known", at, Marks.Small));
        foreach (var reading in listener.Readings)
            _labels.Add(($"measured {Numbers.Show(reading.Reading.Value)}", at, Marks.Small));
    }
}
