namespace Headroom.Engineering.Power;

/// <summary>Handing out a power budget, one ask after the other.</summary>
public static class PortBudget
{
    // Added one by one in binary, 8 asks of 15.4 W come to a little more than 123.2; a nanowatt is far below what any switch counts in.
    internal const double GuardWatts = 1e-9;

    /// <summary>Serves asks in the order given until the budget is used up.</summary>
    /// <param name="budgetWatts">Power to hand out [W]; 0 or more.</param>
    /// <param name="asks">What each port asks for [W], in the order served; each 0 or more. An unknown ask must be settled before.</param>
    /// <param name="atRefusal">What happens after an ask that does not fit.</param>
    /// <returns>What was granted, and what is left. An ask fits to the last nanowatt.</returns>
    /// <remarks>Source: plain sum; the ways in which switches count were seen described in a public kernel's change notes.</remarks>
    public static BudgetFill Fill(double budgetWatts, ReadOnlySpan<double> asks, AtRefusal atRefusal)
    {
        Require.AtLeast(0, budgetWatts, "W");
        foreach (var watts in asks)
            Require.AtLeast(0, watts, "W", nameof(asks));
        var granted = new bool[asks.Length];
        var sum = 0.0;
        for (var i = 0; i < asks.Length; i++)
        {
            granted[i] = sum + asks[i] <= budgetWatts + GuardWatts;
            if (granted[i])
                sum += asks[i];
            else if (atRefusal == AtRefusal.Stop)
                break;
        }
        return new BudgetFill(granted, GrantedWatts: sum, LeftWatts: budgetWatts - sum);
    }
}
