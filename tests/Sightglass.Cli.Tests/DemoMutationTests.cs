using System.Diagnostics;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cli.Books;

namespace Sightglass.Cli.Tests;

/// <summary>One token of the demo book changed, in its systems, its cards or its drills and situations: `check` accepts or refuses it, and a refusal points to it.</summary>
public sealed class DemoMutationTests(ITestOutputHelper output)
{
    /// <summary>How far from the change a finding may stand, in lines.</summary>
    private const int Near = 2;

    /// <summary>Set SIGHTGLASS_MUTATIONS for more than the gate takes.</summary>
    private static readonly int s_count = Number("SIGHTGLASS_MUTATIONS", 24);

    /// <summary>Set SIGHTGLASS_SEED to try another series.</summary>
    private static readonly int s_seed = Number("SIGHTGLASS_SEED", 20261127);

    [Fact]
    public void Check_OneTokenOfTheDemoChanged_NeverThrowsAndPointsToIt()
    {
        using ScratchFolder scratch = new();
        string demo = Path.Combine(Call.Root, "books", "curlew");
        Dictionary<string, string> texts = Directory.EnumerateFiles(demo, "*", SearchOption.AllDirectories).ToDictionary(f => Path.GetRelativePath(demo, f), File.ReadAllText);
        foreach ((string file, string text) in texts)
        {
            scratch.Write(file, text);
        }

        string[] files = [.. texts.Keys.Where(IsAsked).Order(StringComparer.Ordinal)];
        ILookup<string, string> sorts = files.ToLookup(SortOf);
        Dictionary<string, Mutator> mutators = files.Select((f, i) => (f, i)).ToDictionary(f => f.f, f => new Mutator(texts[f.f], s_seed + f.i));
        Random random = new(s_seed);
        int rejected = 0, placed = 0;
        Stopwatch watch = Stopwatch.StartNew();
        for (int i = 0; i < s_count; i++)
        {
            string[] sort = [.. sorts.ElementAt(i % sorts.Count)];
            string file = Weighed(sort, mutators, random);
            Mutant mutant = mutators[file].Next();
            scratch.Write(file, mutant.Text);
            Diagnostic[] errors = Errors(scratch.Folder, file, mutant);
            scratch.Write(file, texts[file]);
            if (errors.Length == 0)
            {
                continue;
            }

            rejected++;
            bool isPlaced = errors.Any(d => IsNear(d.Span, file, mutant));
            placed += isPlaced ? 1 : 0;
            if (!isPlaced)
            {
                output.WriteLine($"{file}:{mutant.Line}: {mutant.What}\n    {string.Join("\n    ", errors.Take(4))}");
            }
        }

        output.WriteLine($"seed {s_seed}: {s_count} changed, {rejected} rejected, {placed} placed within {Near} lines, {watch.Elapsed.TotalSeconds:0} s");
        Assert.InRange(rejected, 1, s_count);
        Assert.True(placed >= 0.95 * rejected, $"{placed} of {rejected} rejected books have a finding within {Near} lines of the change");
    }

    /// <summary>As `check` does it; what it throws would be exit code 3.</summary>
    private static Diagnostic[] Errors(string folder, string file, Mutant mutant)
    {
        try
        {
            return [.. BookInspection.ReadAnew(folder, all: true).Found.Where(d => d.Severity == Severity.Error)];
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"{file}:{mutant.Line}: {mutant.What}: {e.Message}", e);
        }
    }

    private static string Weighed(string[] files, Dictionary<string, Mutator> mutators, Random random)
    {
        int at = random.Next(files.Sum(f => mutators[f].Tokens));
        return files.First(f => (at -= mutators[f].Tokens) < 0);
    }

    private static bool IsAsked(string file) => Path.GetExtension(file) is ".yaml" or ".card";

    /// <summary>Cards; drills and situations; translations; all else.</summary>
    private static string SortOf(string file) => file.Split(Path.DirectorySeparatorChar)[0] switch
    {
        "cards" => "1 cards",
        "drills" or "situations" => "2 drills",
        "words" => "3 words",
        _ => "0 systems",
    };

    /// <summary>Where it stands, or where what it is part of is used.</summary>
    private static bool IsNear(Span span, string file, Mutant mutant)
    {
        for (Span at = span; at.Source is { } source; at = source.SeenFrom)
        {
            if (at.Path.Replace('/', Path.DirectorySeparatorChar) == file && at.Line >= mutant.Line - Near && at.Line <= mutant.LastLine + Near)
            {
                return true;
            }
        }

        return false;
    }

    private static int Number(string name, int otherwise) => int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : otherwise;
}
