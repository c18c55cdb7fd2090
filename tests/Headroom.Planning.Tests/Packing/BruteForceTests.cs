using Headroom.Planning.Packing;

namespace Headroom.Planning.Tests.Packing;

public sealed class BruteForceTests
{
    private static readonly Gen<PackProblem> Problems = Gen.Select(
        Gen.Select(Gen.Int[0, 3], Gen.Int[1, 9]).Array[1, 3],
        Gen.Select(Gen.Int[1, 4], Gen.Int[4, 14], Gen.Int[1, 9], Gen.Bool).Array[1, 3],
        Gen.Int[1, 2],
        Gen.Int[0, 255])
        .Select((kinds, boxes, places, bits) => Problem(kinds, boxes, places, bits));

    // Every way of filling boxes, one after the other, against the model; problems without any solution are among them.
    [Fact]
    public void A_small_problem_comes_to_what_trying_everything_comes_to() => Problems.Sample(
        problem =>
        {
            var packed = Packer.Solve(problem, PackEffort.Usual);
            Assert.Equal(BruteForce.Least(problem), packed.Cost);
            Assert.True(packed.Proved);
            if (packed.Cost is not null)
                FitCheck.Holds(problem, packed);
        },
        iter: Long.Samples(4000), threads: 1);

    [Fact]
    public void What_is_bought_first_in_sum_is_never_dearer_than_what_fits() => Problems.Sample(
        problem =>
        {
            var (set, bound) = new RelaxedModel(problem, 9).Next(PackEffort.Usual);
            if (BruteForce.Least(problem) is not { } least)
                return;
            Assert.NotNull(set);
            Assert.True(bound <= least, $"{bound} is called a bound, but {least} is possible");
        },
        iter: Long.Samples(2000), threads: 1);

    // Set after set in the order of what each costs at the least, packed exactly: the cheapest comes up before anything that is dearer.
    [Fact]
    public void Sets_of_one_place_in_the_order_of_their_cost_come_to_what_trying_everything_comes_to() => Problems.Where(problem => SetStream.PlaceOf(problem) is not null).Sample(
        problem =>
        {
            var sets = new SetStream(problem, SetStream.PlaceOf(problem)!.Value, 9, []);
            var (best, last) = ((long?)null, 0L);
            while (sets.Next(PackEffort.Usual) is { Set: { } set, Bound: { } bound } && !(bound >= best))
            {
                Assert.True(bound >= last, $"{bound} comes after {last}");
                last = bound;
                var packed = ExactPacking.Of(problem, sets.Table, set, [], [], PackEffort.Usual);
                Assert.True(packed.Cost is null || packed.Cost >= bound, $"{packed.Cost} is possible, but {bound} is called a bound");
                best = packed.Cost is { } cost && !(cost >= best) ? cost : best;
            }

            Assert.Equal(BruteForce.Least(problem), best);
        },
        iter: Long.Samples(2000), threads: 1);

    // What is filled at once fits, costs what it says, and is never below the least.
    [Fact]
    public void A_set_that_is_found_at_once_fits_and_costs_what_it_says() => Problems.Where(problem => problem.Places == 1).Sample(
        problem =>
        {
            var least = BruteForce.Least(problem);
            foreach (var set in QuickSets.Of(problem, 0, []))
            {
                FitCheck.Holds(problem, new Packed(set.Cost, 0, set.Boxes));
                Assert.True(set.Cost >= least, $"{set.Cost} is below {least}");
            }
        },
        iter: Long.Samples(2000), threads: 1);

    [Fact]
    public void Another_thing_to_be_served_never_costs_less() => Problems.Sample(
        problem =>
        {
            var more = problem with { Kinds = [problem.Kinds[0] with { Count = problem.Kinds[0].Count + 1 }, .. problem.Kinds.Skip(1)] };
            var (before, after) = (Packer.Solve(problem, PackEffort.Usual).Cost, Packer.Solve(more, PackEffort.Usual).Cost);
            Assert.True(after is null || before <= after, $"{before}, with one more {after}");
        },
        iter: Long.Samples(2000), threads: 1);

    [Fact]
    public void The_order_in_which_things_are_written_does_not_matter() => Problems.Sample(
        problem =>
        {
            var last = problem.Kinds.Count - 1;
            var turned = problem with
            {
                Kinds = [.. problem.Kinds.Reverse()],
                Boxes = [.. problem.Boxes.Reverse().Select(box => box with { Serves = [.. box.Serves.Select(serve => serve with { Kind = last - serve.Kind })] })],
            };
            Assert.Equal(Packer.Solve(problem, PackEffort.Usual).Cost, Packer.Solve(turned, PackEffort.Usual).Cost);
        },
        iter: Long.Samples(2000), threads: 1);

    private static PackProblem Problem((int Count, int Load)[] kinds, (int Ports, int Limit, int Cost, bool Split)[] boxes, int places, int bits) => new(
        places,
        [.. kinds.Select((kind, i) => new PackKind($"k{i}", kind.Count, places == 1 ? [0] : (bits >> i & 1) == 0 ? [i % 2] : [0, 1]))],
        [.. boxes.Select((box, i) => Box(box, i, kinds, bits))]);

    // A box of two groups lets the first kind, where the bits say so, into the first group only, and bars the last from every second box.
    private static PackBox Box((int Ports, int Limit, int Cost, bool Split) box, int number, (int Count, int Load)[] kinds, int bits) => new(
        $"b{number}", box.Cost, box.Split ? [box.Ports, 1] : [box.Ports], [.. Serves(box.Split, number, kinds, bits)], [box.Limit]);

    private static IEnumerable<PackServe> Serves(bool split, int number, (int Count, int Load)[] kinds, int bits)
    {
        for (var kind = 0; kind < kinds.Length; kind++)
        {
            if (kind == kinds.Length - 1 && number % 2 == 1 && (bits & 8) != 0)
                continue;
            yield return new(kind, 0, [kinds[kind].Load]);
            if (kind == 0 && (bits & 32) != 0)
                yield return new(kind, 0, [0]) { Via = "between", Cost = 2 };
            if (split && (kind > 0 || (bits & 16) == 0))
                yield return new(kind, 1, [kinds[kind].Load]);
        }
    }
}
