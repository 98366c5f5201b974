namespace Sightglass.Network.Tests.Probes;

/// <summary>
/// Values from outside the project with the inputs they were worked out for. What is computed here is a function of the inputs, so that a
/// test can put one of them off and see that the check notices.
/// </summary>
/// <param name="Id">As in the list of checks: A1_01.</param>
/// <param name="Source">Where formula and values are from.</param>
/// <param name="Inputs">Physical coefficients by name.</param>
/// <param name="Compute">What the laws give for the inputs, beside what is expected.</param>
public sealed record ReferenceCheck(
    string Id, string Source, IReadOnlyDictionary<string, double> Inputs, Func<IReadOnlyDictionary<string, double>, IEnumerable<Expectation>> Compute)
{
    /// <summary>Asserts every expectation.</summary>
    public void Holds()
    {
        Expectation[] all = [.. Compute(Inputs)];
        Assert.NotEmpty(all);
        Assert.All(all, e => Assert.True(e.Met, $"{Id}: {e}"));
    }

    /// <summary>Whether the check notices that one input is too great by a hundredth.</summary>
    public bool Notices(string input)
    {
        Dictionary<string, double> off = new(Inputs) { [input] = Inputs[input] * 1.01 };
        return Compute(off).Any(e => !e.Met);
    }
}
