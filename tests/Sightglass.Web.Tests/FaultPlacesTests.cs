using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Web.Machine;

namespace Sightglass.Web.Tests;

/// <summary>Which faults are offered, and how it is said where they are.</summary>
public sealed class FaultPlacesTests
{
    private const string Pair = "brake pipe and main reservoir pipe hoses at the rear";

    private static readonly ClassBook s_book = Shelves.Curlew.Book.Coupled("local train");

    [Theory]
    [InlineData("4101", Pair, "coupling of 4101 and car 1: brake pipe and main reservoir pipe hoses")]
    [InlineData("", Pair, "coupling of this machine and car 1: brake pipe and main reservoir pipe hoses")]
    [InlineData("4101", "brake pipe and main reservoir pipe hoses between car 1 and car 2", "coupling of car 1 and car 2: brake pipe and main reservoir pipe hoses")]
    [InlineData("4101", "aft supply valve", "aft supply valve")]
    public void Words_OfAnItem_SayWhere(string road, string item, string expected) => Assert.Equal(expected, new FaultPlaces(s_book, road).Words(item));

    /// <summary>What a fault is called agrees with the thing that has it, where a language asks for that.</summary>
    [Theory]
    [InlineData("Válvula de mano: trabada")]
    [InlineData("Manguera: reventada")]
    [InlineData("Relé: trabado")]
    [InlineData("Llave de corte: trabada")]
    public void Of_APlan_NamesFaultsAsTheLanguageAgrees(string expected)
    {
        using IDisposable speaking = Tongue.Spanish.Speak();
        Assert.Contains(expected, FaultChoice.Of(Shelves.Curlew.Now.PlanOf(Shelves.Leak), _ => true).Select(c => c.Words));
    }

    /// <summary>What two vehicles have between them is offered at both, and a pair of hoses in the systems of both lines.</summary>
    [Theory]
    [InlineData(Pair, "brake air", 0, true)]
    [InlineData(Pair, "main reservoir air", 1, true)]
    [InlineData(Pair, "fuel", 0, false)]
    [InlineData(Pair, "brake air", 2, false)]
    [InlineData(Pair, null, null, true)]
    [InlineData("brake pipe coupling at the rear", "brake air", 1, true)]
    [InlineData("brake pipe coupling at the rear", "main reservoir air", 1, false)]
    [InlineData("rear brake pipe hose", "brake air", 1, false)]
    public void IsOf_SystemAndVehicle_IsWhatTouchesBoth(string item, string? system, int? vehicle, bool expected) =>
        Assert.Equal(expected, new FaultPlaces(s_book, "4101").IsOf(s_book.Items[item], system, vehicle));
}
