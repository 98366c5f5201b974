using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Samples;

namespace Sightglass.Book.Tests;

/// <summary>Routes and how vehicles run, as they stand in a book; every mistake is told where it is. The sample book has both, so edits and mutations of it are edits of these.</summary>
public sealed class RouteReaderTests
{
    private const double Mile = 1609.344;

    [Fact]
    public void Read_GoodOne_TakesAllOfIt()
    {
        Route route = SampleBook.Good(SampleBook.Text).Routes["over the hill"];
        Assert.Equal(6 * Mile, route.Length, 1e-6);
        Assert.Equal([2 * Mile, 3 * Mile, 6 * Mile, 8 * Mile], route.Stretches.Select(s => s.From).Append(route.To), (a, b) => Math.Abs(a - b) < 1e-6);
        Assert.Equal(route.Stretches.Skip(1).Select(s => s.From), route.Stretches.SkipLast(1).Select(s => s.To));
        Assert.Equal([0, 0.012, -0.01], route.Stretches.Select(s => s.Grade));
        Assert.Equal([0, 3, 30.48 / 500 * 180 / Math.PI], route.Stretches.Select(s => s.CurveDegrees), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal([1, 0.8, 1], route.Stretches.Select(s => s.Holds));
        Assert.Equal([("Yard", null), ("Summit", (double?)120)], route.Places.Select(p => (p.Name, p.Stops)));
        Assert.Equal([("dry", 0.25, 0.30), ("wet", 0.15, 0.15)], route.Rails.Select(r => (r.Name, r.Adhesion, r.Sanded)));
    }

    [Fact]
    public void Read_Running_TakesAllOfIt()
    {
        Running running = SampleBook.Good(SampleBook.Text).Running!;
        Assert.Equal((80e3, 4, 11.0), (running.Mass, running.Axles, running.Resistance.Front));
        Assert.Equal([1.3, 29, 0.03, 0.0024], running.Resistance.Own);
        Assert.Equal(("engine", "throttle", 200e3, 2, 0.2), (running.Pulls!.Engine, running.Pulls.Handle, running.Pulls.Most, running.Pulls.DrivenAxles, running.Pulls.HeadEndCosts));
        Assert.Equal(["idle", "notch 1", "notch 2"], running.Pulls.Notches);
        Assert.Equal(400e3, running.Pulls.Greatest);
        Assert.Equal([50e3, 17e3], running.DynamicBrake.Select(d => d.Force));
        Assert.Equal(("on", 0.5), (running.Brakes!.Emergency["pump switch"], running.Brakes.Planned));
    }

    [Theory]
    [InlineData("- { to: 6 mi, grade", "- { to: 3 mi, grade", "does not rise")]
    [InlineData("- { to: 3 mi, limit: 40 mph }", "- { to: 1 mi, limit: 40 mph }", "does not rise")]
    [InlineData("- { to: 3 mi, limit: 40 mph }", "- { to: 3 mi }", "limit")]
    [InlineData("- { to: 3 mi, limit: 40 mph }", "- { limit: 40 mph }", "`to`")]
    [InlineData("- { to: 3 mi, limit: 40 mph }", "- { to: 3 mi, limit: 0 mph }", "more than zero")]
    [InlineData("- { to: 3 mi, limit: 40 mph }", "- { to: 3 mi, limit: 40 psi }", "psi")]
    [InlineData("- { to: 3 mi, limit: 40 mph }", "- { to: 2000 mi, limit: 40 mph }", "longer than 2000 km")]
    [InlineData("grade: 1.2 %", "grade: 40 %", "no steeper than 15 %")]
    [InlineData("curve: 3 deg", "curve: 120 deg", "0 deg to 70 deg")]
    [InlineData("curve: 3 deg", "curve: 3 deg, radius: 500 m", "keep one of them")]
    [InlineData("radius: 500 m", "radius: 5 m", "25 m or more")]
    [InlineData("holds: 80 %", "holds: 0 %", "carries no train")]
    [InlineData("Summit: { at: 5 mi", "Summit: { at: 15 mi", "on the route")]
    [InlineData("Summit: { at: 5 mi, stops: 2 min }", "Summit: { stops: 2 min }", "`at`")]
    [InlineData("stops: 2 min", "stops: 0 s", "more than zero")]
    [InlineData("wet: { adhesion: 0.15 }", "wet: { adhesion: 0.15, sanded: 0.1 }", "no less than `adhesion`")]
    [InlineData("wet: { adhesion: 0.15 }", "wet: { adhesion: 0 }", "more than 0")]
    [InlineData("wet: { adhesion: 0.15 }", "wet: { sanded: 0.15 }", "`adhesion`")]
    [InlineData("rail: { dry:", "rial: { dry:", "did you mean `rail`")]
    [InlineData("  mass: 80 t\n", "", "`mass`")]
    [InlineData("mass: 80 t", "mass: 80 kN", "kN")]
    [InlineData("axles: 4", "axles: four", "whole number")]
    [InlineData("per axle: 29", "per axle: -29", "0 or more")]
    [InlineData("per axle: 29, ", "", "`per axle`")]
    [InlineData("resistance: { constant: 1.3, per axle: 29, per speed: 0.03, per area: 0.0024 }\n  front: 11 m^2", "resistance: locomotive 1926", "`front`")]
    [InlineData("resistance: { constant: 1.3, per axle: 29, per speed: 0.03, per area: 0.0024 }", "resistance: locomotive 1927", "locomotive 1926")]
    [InlineData("engine: engine, handle", "engine: engin, handle", "did you mean `engine`")]
    [InlineData("driven axles: 2", "driven axles: 6", "at most the 4 axles")]
    [InlineData("notch 2: 400 kW", "notch 3: 400 kW", "no position `notch 3`")]
    [InlineData("notch 2: 400 kW", "notch 2: -400 kW", "0 kW or more")]
    [InlineData("notch 1: 100 kW, notch 2: 400 kW", "notch 1: 0 kW", "no position of `power` pulls")]
    [InlineData("{ speed: 60 mph, force: 17 kN }", "{ speed: 10 mph, force: 17 kN }", "does not rise")]
    [InlineData("{ speed: 60 mph, force: 17 kN }", "{ speed: 60 mph }", "`force`")]
    [InlineData("emergency: { pump switch: \"on\" }", "emergency: { pump switch: hard }", "no position `hard`")]
    [InlineData("emergency: { pump switch: \"on\" }, ", "", "`emergency`")]
    [InlineData("planned: 50 %", "planned: 0 %", "more than 0 %")]
    [InlineData("dynamic brake: [", "dynamc brake: [", "did you mean `dynamic brake`")]
    public void Read_AMistake_IsToldWhereItIs(string right, string wrong, string says)
    {
        Assert.Contains(right, SampleBook.Text, StringComparison.Ordinal);
        (ClassBook? book, DiagnosticList found) = SampleBook.Read(SampleBook.Text.Replace(right, wrong, StringComparison.Ordinal));
        Assert.Null(book);
        Assert.Contains(found, d => d.Severity == Severity.Error && d.ToString().Contains(says, StringComparison.Ordinal) && d.Span.Source is not null);
    }

    [Theory]
    [InlineData("stretches: []")]
    [InlineData("stretches: { to: 3 mi }")]
    [InlineData("stretches: soon")]
    [InlineData("stretches: [[1, 2]]")]
    [InlineData("places: { A: { at: 1 mi } }")]
    [InlineData("{}")]
    [InlineData("[]")]
    public void Read_NoStretches_IsAnErrorNeverAThrow(string body)
    {
        DiagnosticList found = SampleBook.Read($"book: A\nroutes:\n  r: {(body[0] is '{' or '[' ? body : $"{{ {body} }}")}\n").Found;
        Assert.True(found.HasErrors);
    }
}
