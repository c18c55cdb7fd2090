using Google.OrTools.Sat;

namespace Headroom.Planning.Packing;

/// <summary>The rows that make the boxes of each place a star around its head, and the heads a star around that of the main place. All slots are filled.</summary>
internal sealed class LinkRows(PackProblem problem, CpModel model, IReadOnlyList<PackSlot> slots, List<SlotParts> parts)
{
    /// <summary>Adds them.</summary>
    public void Add()
    {
        var places = slots.Select(slot => slot.Place).Distinct().ToList();
        foreach (var place in places)
        {
            var inPlace = Enumerable.Range(0, slots.Count).Where(i => slots[i].Place == place).ToList();
            foreach (var i in inPlace)
                AddSlot(parts[i], inPlace.Count, place == MainOf(places) ? places.Count : 1);
            model.AddExactlyOne(inPlace.Select(i => (ILiteral)parts[i].Head!));
        }
    }

    private int MainOf(List<int> places) => places.Contains(problem.MainPlace) ? problem.MainPlace : places[0];

    // A box that is no head has one link, to the head; the head has one to each other and those out of the place.
    private void AddSlot(SlotParts slot, int inPlace, int outwards)
    {
        var head = model.NewBoolVar("");
        slot.Head = head;
        model.Add(LinearExpr.Sum(slot.Links.Select(link => link.Inner)) == 1 + head * (inPlace - 2));
        model.Add(LinearExpr.Sum(slot.Links.Select(link => link.Outer)) == head * outwards);
    }
}
