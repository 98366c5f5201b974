using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Tests;

public sealed class TruthScopeTests
{
    [Fact]
    public void Formula_OfAFault_HoldsWhileItIsIn()
    {
        Plan plan = Books.Curlew;
        TruthScope scope = plan.Truth;
        using LaneBank bank = new(plan);
        Signal leaks = Read("fault leak of aft compartment", scope);
        Signal both = Read("fault leak of aft compartment and not fault leak of centre compartment and volume of aft compartment > 0 L", scope);
        Assert.True(leaks.Evaluate(bank)[0] < 0);
        bank.SetSlot(0, plan.Items["aft compartment"].Faults["leak"][0].Slot, 0.004);
        Assert.True(leaks.Evaluate(bank)[0] >= 0);
        bank.LookAtEnds();
        Assert.True(both.Evaluate(bank)[0] >= 0);
        Assert.True(leaks.Evaluate(bank)[1] < 0); // another lane is another machine
    }

    /// <summary>A bias may be below zero: it is in all the same.</summary>
    [Fact]
    public void Formula_OfABiasBelowZero_Holds()
    {
        Plan plan = Books.Curlew;
        using LaneBank bank = new(plan);
        Signal wrong = Read("fault bias of cab fuel gauge", plan.Truth);
        bank.SetSlot(0, plan.Items["cab fuel gauge"].Faults["bias"][0].Slot, -0.1);
        Assert.True(wrong.Evaluate(bank)[0] >= 0);
    }

    /// <summary>A card never knows: its names are the plan's alone.</summary>
    [Fact]
    public void Scope_OfThePlan_KnowsNoFaults()
    {
        DiagnosticList found = [];
        const string text = "fault leak of aft compartment";
        Assert.Null(FormulaParser.Parse(text, new SourceText("card", text).Between(0, text.Length), Books.Curlew.Scope, found, FormulaKind.Condition));
        Assert.NotEmpty(found);
        Assert.Contains(text, Books.Curlew.Truth.Names);
    }

    private static TruthSignal Read(string text, TruthScope scope)
    {
        DiagnosticList found = [];
        Formula? formula = FormulaParser.Parse(text, new SourceText("drill", text).Between(0, text.Length), scope, found, FormulaKind.Condition);
        Assert.True(formula is not null, string.Join('\n', found));
        return new(formula, scope);
    }
}
