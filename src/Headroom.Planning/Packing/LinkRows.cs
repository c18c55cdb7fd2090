using Google.OrTools.Sat;

namespace Headroom.Planning.Packing;

/// <summary>The rows that make the boxes of each place a star around its head, and give the head the links that leave the place. All slots are filled.</summary>
internal sealed class LinkRows(PackProblem problem, CpModel model, IReadOnlyList<PackSlot> slots, List<SlotParts> parts)
{
    /// <summary>Adds them.</summary>
    public void Add()
    {
        foreach (var place in slots.Select(slot => slot.Place).Distinct())
        {
            var inPlace = Enumerable.Range(0, slots.Count).Where(i => slots[i].Place == place).ToList();
            foreach (var i in inPlace)
                AddSlot(parts[i], inPlace.Count, problem.Links[place]);
            model.AddExactlyOne(inPlace.Select(i => (ILiteral)parts[i].Head!));
        }
    }

    // A box that is no head has one link, to the head; the head has one to each other and those out of the place.
    private void AddSlot(SlotParts slot, int inPlace, PlaceLinks outwards)
    {
        var head = model.NewBoolVar("");
        slot.Head = head;
        model.Add(LinearExpr.Sum(slot.Links.Select(link => link.Inner)) == 1 + head * (inPlace - 2));
        model.Add(LinearExpr.Sum(slot.Links.Select(link => link.Outer)) == head * outwards.Line);
        model.Add(LinearExpr.Sum(slot.Links.Select(link => link.Backbone)) == head * outwards.Backbone);
    }
}
