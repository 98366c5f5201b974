using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Trials.Causes;
using Sightglass.Trials.Failures;
using Sightglass.Trials.Tests.Causes;
using Xunit;

namespace Sightglass.Trials.Tests.Failures;

/// <summary>What happens when something of one relay's circuit fails. Expected: derived, by going through its parts.</summary>
public sealed class FailureRunTests
{
    private static readonly Lazy<ImmutableArray<Failure>> s_all = new(Run);

    [Theory]
    [InlineData("relay", "open coil", "no longer it works")]
    [InlineData("contact", "does not close", "no longer it works; asked lamp: dark instead of lit")]
    [InlineData("breaker", "open", "no longer it works; feed lamp: dark instead of lit; asked lamp: dark instead of lit")]
    [InlineData("asked lamp", "burnt out", "asked lamp: dark instead of lit")]
    public void Of_OneFault_TellsWhatIsOtherwise(string item, string fault, string told)
    {
        Failure failure = Of(item, fault);
        Assert.Equal(told.Split("; ").Order(StringComparer.Ordinal), failure.NoLonger.Select(f => "no longer " + f.Name).Concat(failure.Changes.Select(c => c.Words)).Order(StringComparer.Ordinal));
        Assert.Empty(failure.Now);
        Assert.False(failure.IsHidden);
    }

    /// <summary>A lamp that stays lit is lit already; one ground on a circuit that touches the frame nowhere else is no short; a handle that sticks is found when somebody turns it.</summary>
    [Theory]
    [InlineData("feed lamp", "stays lit")]
    [InlineData("plus", "grounded")]
    [InlineData("switch", "stuck")]
    [InlineData("contact", "welded")]
    public void Of_WhatNobodySees_IsHidden(string item, string fault) => Assert.True(Of(item, fault).IsHidden);

    private static Failure Of(string item, string fault) => s_all.Value.Single(f => f.Item.Name == item && f.Fault == fault);

    private static ImmutableArray<Failure> Run()
    {
        BoundSearch search = Works.Bind("it does not work", []) ?? throw new InvalidOperationException();
        return FailureRun.Of(search.Plan, search.Situation, [.. search.Plan.Book.ItemsInOrder], SimTime.FromSeconds(10));
    }
}
