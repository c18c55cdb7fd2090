using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Money;

/// <summary>The hours of a job: tasks by number, and one factor of the site that is common to all of them.</summary>
/// <param name="Tasks">The tasks with their number.</param>
/// <param name="Difficulty">How much harder the site is than most; null for 1.</param>
public sealed record LabourSum(IReadOnlyList<TaskSum> Tasks, ThreePoint? Difficulty)
{
    /// <summary>The mean of the factor of the site.</summary>
    public decimal Factor => Difficulty is null ? 1 : Guess.Mean(Difficulty);

    /// <summary>Expected hours, as far as tasks are known.</summary>
    public decimal Hours => Minutes * Factor / 60;

    /// <summary>The standard deviation of the hours: tasks independent of one another, the factor common to all. Source: variance of a product of two independent figures.</summary>
    public double DeviationHours
    {
        get
        {
            var ofTasks = Tasks.Sum(task => task.Count * Square(task.Deviation ?? 0));
            var ofFactor = Difficulty is null ? 0 : Square(Guess.Deviation(Difficulty));
            return Math.Sqrt((double)(Square(Factor) * ofTasks + Square(Minutes) * ofFactor + ofTasks * ofFactor)) / 60;
        }
    }

    /// <summary>Tasks whose minutes nobody wrote.</summary>
    public IEnumerable<string> NotKnown => Tasks.Where(task => task.Minutes is null).Select(task => task.Task);

    private decimal Minutes => Tasks.Sum(task => task.Count * (task.Minutes ?? 0));

    private static decimal Square(decimal value) => value * value;
}
