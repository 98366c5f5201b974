namespace Sightglass.Bench;

/// <summary>One bench that is called by name.</summary>
/// <param name="Name">As it is typed, and as its report is called.</param>
/// <param name="Says">Its numbers and what it measures.</param>
/// <param name="Run">Measures.</param>
internal sealed record BenchVerb(string Name, string Says, Func<Report, BenchNumbers, Task> Run)
{
    public BenchVerb(string name, string says, Action<Report, BenchNumbers> run)
        : this(name, says, (report, numbers) =>
        {
            run(report, numbers);
            return Task.CompletedTask;
        })
    {
    }
}
