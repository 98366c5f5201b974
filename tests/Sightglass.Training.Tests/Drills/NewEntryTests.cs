using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.World.Situations;

namespace Sightglass.Training.Tests.Drills;

/// <summary>Situations and drills as they are written into a book by the program.</summary>
public sealed class NewEntryTests
{
    private static readonly ClassBook s_book = Books.Curlew.Book;

    /// <summary>Every situation of the demo, written anew under another name and read back, is the same.</summary>
    [Fact]
    public void Situations_WrittenAndReadBack_AreTheSame()
    {
        Situation[] written = [.. s_book.Situations.Values.OrderBy(s => s.Span)];
        Assert.Contains(written, s => s.States is not null);
        ClassBook read = Read([.. written.Select(s => NewSituation.Of(s with { Name = Other(s.Name), Cards = [] }))]);
        Assert.All(written, s => Assert.Equal(Said(s), Said(read.Situations[Other(s.Name)])));
    }

    /// <summary>One case of each situation with nothing left to draw: every draw of whatever case is what the first case drew, to the last bit but one.</summary>
    [Fact]
    public void Situations_OfOneCase_DrawWhatItDrew()
    {
        CaseDraws draws = new(5, 17);
        (Situation Of, SituationStart Start)[] all = [.. s_book.Situations.Values.OrderBy(s => s.Span).Where(s => s.Train is null).Select(s => (s, SituationStart.Bind(Books.Curlew, s, [])!))];
        ClassBook read = Read([.. all.Select(s => NewSituation.Of(s.Start.Of(draws, Other(s.Of.Name), null)))]);
        Assert.All(all, s =>
        {
            SituationStart again = SituationStart.Bind(Books.Curlew, read.Situations[Other(s.Of.Name)], [])!;
            Assert.DoesNotContain(again.Ranges, r => r.Varies);
            Dictionary<string, DrawnRange> now = again.Ranges.Take(again.Situation.Start.Length + again.Situation.People.Length).ToDictionary(r => r.Name, StringComparer.Ordinal);
            foreach (DrawnRange drawn in s.Start.Ranges.Skip(s.Of.States is null ? 0 : 1).Take(s.Of.Start.Length + s.Of.People.Length))
            {
                Assert.Equal(drawn.Words.IsEmpty ? "" : drawn.Say(draws), drawn.Words.IsEmpty ? "" : now[drawn.Name].Say(new(1, 2)));
                Assert.Equal(drawn.Words.IsEmpty ? drawn.Value(draws) : 0, drawn.Words.IsEmpty ? now[drawn.Name].Value(new(1, 2)) : 0, 1e-15 * Math.Max(1, Math.Abs(drawn.Value(draws))));
            }

            // What a row of a recording set stands there as well.
            Assert.Equal(s.Of.Start.Length + (s.Of.States?.Of?.Columns.Sum(c => c.Sets.Length) ?? 0), again.Situation.Start.Length);
        });
    }

    private static string Other(string name) => name + ", again";

    private static ClassBook Read(ImmutableArray<BookAddition> additions)
    {
        DiagnosticList found = [];
        NewFile file = new("situations/again.yaml", ["Written by a test."], additions);
        SourceText[] yaml = [.. Directory.GetFiles(Books.FolderOf("curlew"), "*.yaml", SearchOption.AllDirectories).Where(f => !f.Contains("/words/", StringComparison.Ordinal)).Select(f => new SourceText(Path.GetRelativePath(Books.FolderOf("curlew"), f), File.ReadAllText(f)))];
        return BookReader.Read([.. yaml, file.Source], s_book.CardTexts, KindLibrary.Catalog, found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }

    /// <summary>All but where it stands; numbers to 14 digits, because a unit is put on and taken off.</summary>
    private static string Said(Situation s) => string.Join('\n',
    [
        s.Text, string.Join(',', s.RoadNumbers), s.Train, s.Answers.ToString(),
        FormattableString.Invariant($"{s.States?.Recording} {s.States?.From} {s.States?.To} {s.States?.Every}"),
        .. s.People.Select(p => $"{p.Role}: {string.Join(',', p.Places)}"), .. s.Start.Select(Said),
        .. s.Faults.Select(f => FormattableString.Invariant($"{f.Fault} {string.Join(',', f.Items)} {f.AfterFrom:G14} {f.AfterTo:G14} {f.Chance:G14} {string.Join(';', f.Values.Select(Said))}")),
    ]);

    private static string Said(StartValue v) => FormattableString.Invariant($"{v.Name} {v.From:G14} {v.To:G14} {v.Unit} {v.IsWhole} {(v.OneOf.IsDefault ? "" : string.Join(',', v.OneOf))}");
}
