using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Tests.Support;

namespace Sightglass.Trials.Tests.Consists;

/// <summary>
/// Who reaches between vehicles for a hose or a jumper is between them, also from beside: what the train's sheet asks for is asked of whoever handles it. Common practice, no source.
/// </summary>
public sealed class CouplingProtectionTests
{
    public static TheoryData<string> Trains => [.. Books.Curlew.Book.Trains.Keys];

    [Theory]
    [MemberData(nameof(Trains))]
    public void Hazards_OfEveryHoseAndJumper_AskForGoingBetween(string train)
    {
        ClassBook coupled = Books.Curlew.Book.Coupled(train);
        Item[] joined = [.. coupled.Items.Values.Where(i => i.Kind.CoupledAs.Length > 0 && i.Kind.SharesDangers)];
        Assert.NotEmpty(joined);
        Assert.All(joined, i => Assert.Contains("going between", Protections(coupled, i)));
        Assert.All(joined.Where(i => i.Name.StartsWith("head-end", StringComparison.Ordinal)), i => Assert.Contains("lock and tag", Protections(coupled, i)));
    }

    /// <summary>A cover at an end to which nothing is coupled is no coupling, and the machine alone asks nobody for protection between vehicles at its plugs.</summary>
    [Fact]
    public void Hazards_OfAReceptacleByItself_AskForNoGoingBetween()
    {
        ClassBook coupled = Books.Curlew.Book.Coupled("local train");
        Assert.DoesNotContain("going between", Protections(coupled, coupled.Items["B communication receptacle of car 3"]));
        Assert.DoesNotContain("going between", Protections(Books.Curlew.Book, Books.Curlew.Book.Items["rear 27-point control receptacle"]));
    }

    private static ImmutableArray<string> Protections(ClassBook book, Item item) => [.. book.Hazards.Values.Where(h => h.Items.Contains(item.Name)).Select(h => h.Protection).OfType<string>().Distinct()];
}
