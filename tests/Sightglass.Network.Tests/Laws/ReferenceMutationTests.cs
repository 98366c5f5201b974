using System.Reflection;
using Sightglass.Network.Tests.Probes;
using Sightglass.Network.Tests.Stores;

namespace Sightglass.Network.Tests.Laws;

/// <summary>A check that a wrong coefficient cannot fail is none: each input, put off by a hundredth, must make its check fail.</summary>
public sealed class ReferenceMutationTests
{
    public static IEnumerable<TheoryDataRow<string, string>> Inputs =>
        from check in All
        from input in check.Inputs.Keys
        select new TheoryDataRow<string, string>(check.Id, input);

    private static IEnumerable<ReferenceCheck> All =>
        from holder in new[] { typeof(LiquidReferences), typeof(GasReferences), typeof(StoreReferences), typeof(MachineReferences), typeof(ValveReferences), typeof(MixtureReferences) }
        from property in holder.GetProperties(BindingFlags.Public | BindingFlags.Static)
        where property.PropertyType == typeof(ReferenceCheck)
        select (ReferenceCheck)property.GetValue(null)!;

    [Fact]
    public void Check_AsItIs_Holds() => Assert.All(All, c => c.Holds());

    [Theory, MemberData(nameof(Inputs))]
    public void Check_InputOffByAHundredth_Fails(string id, string input) => Assert.True(All.Single(c => c.Id == id).Notices(input));
}
