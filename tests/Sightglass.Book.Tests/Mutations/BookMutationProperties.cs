using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Samples;

namespace Sightglass.Book.Tests.Mutations;

public class BookMutationProperties(ITestOutputHelper output)
{
    private const int Count = 500;

    /// <summary>How far from the change a finding may stand, in lines.</summary>
    private const int Near = 2;

    /// <summary>Set SIGHTGLASS_SEED to try another series.</summary>
    private static readonly int s_seed = int.TryParse(Environment.GetEnvironmentVariable("SIGHTGLASS_SEED"), out int seed) ? seed : 20250301;

    [Fact]
    public void Read_OneTokenChanged_NeverThrowsAndPointsToIt()
    {
        Mutator mutator = new(SampleBook.Text, s_seed);
        int rejected = 0, placed = 0, first = 0;
        for (int i = 0; i < Count; i++)
        {
            Mutant m = mutator.Next();
            (ClassBook? book, DiagnosticList found) = SampleBook.Read(m.Text);
            Diagnostic[] errors = [.. found.Where(d => d.Severity == Severity.Error)];
            Assert.Equal(errors.Length == 0, book is not null);
            if (book is not null)
            {
                continue;
            }

            rejected++;
            first += IsNear(errors[0], m) ? 1 : 0;
            bool isPlaced = found.Any(d => IsNear(d, m));
            placed += isPlaced ? 1 : 0;
            if (!isPlaced)
            {
                output.WriteLine($"line {m.Line}: {m.What}\n    {string.Join("\n    ", found.Take(4))}");
            }
        }

        output.WriteLine($"seed {s_seed}: {Count} changed, {rejected} rejected, {placed} placed within {Near} lines, {first} by the first error");
        Assert.True(placed >= 0.95 * rejected, $"{placed} of {rejected} rejected books have a finding within {Near} lines of the change");
    }

    private static bool IsNear(Diagnostic d, Mutant m) => d.Span.Line >= m.Line - Near && d.Span.Line <= m.LastLine + Near;
}
