using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.World.Tests.Trade;

/// <summary>A small book in memory with one world at the start of one of its situations.</summary>
internal sealed class Rig : IDisposable
{
    private readonly LaneBank _bank;

    public Rig(Plan plan, string situation, ulong number = 0)
        : this(plan, plan.Book.Situations[situation], number)
    {
    }

    public Rig(Plan plan, Situation situation, ulong number = 0)
    {
        Plan = plan;
        _bank = new(plan);
        World = new(_bank, 0) { Journal = [] };
        DiagnosticList found = new();
        SituationStart? start = SituationStart.Bind(plan, situation, found);
        Assert.True(start is not null, string.Join('\n', found));
        start.Apply(World, 1, number);
    }

    public Plan Plan { get; }

    public World World { get; }

    /// <summary>A plan from the text of a book and of its cards.</summary>
    public static Plan Compile(string yaml, params ReadOnlySpan<string> cards)
    {
        DiagnosticList found = new();
        List<SourceText> texts = [];
        foreach (string card in cards)
        {
            texts.Add(new($"{texts.Count}.card", card));
        }

        ClassBook? book = BookReader.Read([new SourceText("book.yaml", yaml)], texts, KindLibrary.Catalog, found);
        Assert.True(book is not null, string.Join('\n', found));
        Plan? plan = PlanCompiler.Compile(book, found);
        Assert.True(plan is not null, string.Join('\n', found));
        return plan;
    }

    /// <summary>A fresh run of the card with the title given.</summary>
    public static CardRun RunOf(Plan plan, string title) => new(ChoicesOf(plan, title));

    /// <summary>The programs of the card with the title given.</summary>
    public static ImmutableArray<ProgramChoice> ChoicesOf(Plan plan, string title)
    {
        DiagnosticList found = new();
        SourceText text = plan.Book.CardTexts.Single(t => $"\n{t.Text}".Contains($"\nCard: {title}\n", StringComparison.Ordinal));
        Card? card = CardReader.Read(text, plan.Book, found);
        Assert.True(card is { HasErrors: false }, string.Join('\n', found));
        return [.. Choices(plan, card, found)];
    }

    /// <summary>A signal's value at a moment, SI.</summary>
    public double At(double seconds, string signal) => At(seconds, w => w.Value(Plan.FindSignal(signal)!));

    /// <summary>What can be seen at a moment.</summary>
    public double At(double seconds, Func<World, double> look)
    {
        double seen = double.NaN;
        World.OnSample = w => seen = look(w);
        World.SampleAt(SimTime.FromSeconds(seconds));
        World.RunTo(SimTime.FromSeconds(seconds));
        Assert.True(World.Trouble is null, World.Trouble);
        return seen;
    }

    /// <summary>What an indication shows at a moment, rounded as it is read, SI.</summary>
    public double Reads(double seconds, string item) => At(seconds, w => w.Read(Plan.Book.Items[item])!.Value);

    /// <summary>Works a control at a moment, from outside.</summary>
    public void Do(double seconds, string item, string position) =>
        World.Do(new WorldAction.Operate(-1, item, position), SimTime.FromSeconds(seconds));

    /// <summary>Puts a fault in at a moment.</summary>
    public void Break(double seconds, string item, string fault, params ReadOnlySpan<(string Name, double Value)> values)
    {
        ImmutableSortedDictionary<string, double> all = ImmutableSortedDictionary<string, double>.Empty.WithComparers(StringComparer.Ordinal);
        foreach ((string name, double value) in values)
        {
            all = all.SetItem(name, value);
        }

        World.Do(new WorldAction.PutIn(item, fault, all), SimTime.FromSeconds(seconds));
    }

    /// <summary>Takes a fault out at a moment.</summary>
    public void Mend(double seconds, string item, string fault) => World.Do(new WorldAction.TakeOut(item, fault), SimTime.FromSeconds(seconds));

    public void Dispose() => _bank.Dispose();

    private static IEnumerable<ProgramChoice> Choices(Plan plan, Card card, DiagnosticList found)
    {
        BindingCase?[] cases = [.. CardCompiler.Bindings(card, plan.Book)];
        foreach (BindingCase? one in cases.Length == 0 ? [null] : cases)
        {
            CardProgram? program = CardCompiler.TryCompile(card, plan.Book, one?.Word, found);
            Assert.True(program is not null, string.Join('\n', found));
            yield return new(one?.When, program);
        }
    }
}
