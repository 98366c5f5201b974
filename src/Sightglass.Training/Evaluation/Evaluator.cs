using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.World.People;
using Sightglass.World.Runs;

namespace Sightglass.Training.Evaluation;

/// <summary>
/// Makes the sheet of a drill by what came of it, in three layers: what must not come about, what is so at the end and by when, and those orders alone that safety needs. Time counts
/// from the moment at which the trainee could know.
/// </summary>
public sealed class Evaluator
{
    /// <summary>Raised when the same outcome would give another sheet.</summary>
    public const int CurrentRules = 1;

    /// <summary>Points for a right report.</summary>
    public const double ReportWorth = 2;

    private readonly BoundDrill _bound;
    private readonly Drill _drill;
    private readonly DrillOutcome _outcome;
    private readonly List<EvaluationLine> _lines = [];
    private readonly SimTime? _known;
    private readonly SimTime? _ended;

    private Evaluator(BoundDrill bound, DrillOutcome outcome)
    {
        (_bound, _drill, _outcome) = (bound, bound.Drill, outcome);
        _known = First(DrillNoteKind.Known)?.At;
        _ended = (First(DrillNoteKind.Declared) ?? First(DrillNoteKind.TimeOver))?.At;
    }

    /// <param name="drill">What was asked.</param>
    /// <param name="outcome">What came of it.</param>
    public static EvaluationSheet Evaluate(BoundDrill drill, DrillOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(outcome);
        return new Evaluator(drill, outcome).Sheet();
    }

    private EvaluationSheet Sheet()
    {
        Forbidden();
        Authority();
        Orders();
        Results();
        Told();
        Help();
        double most = _lines.Where(l => l.Worth > 0).Sum(l => l.Worth);
        double points = _lines.Sum(l => l.Worth < 0 ? l.Worth : l.IsMet ? l.Worth : 0);
        return new(CurrentRules, [.. _lines], Math.Max(0, points), most, _drill.PassesFrom * most, _known, _ended);
    }

    private void Forbidden()
    {
        foreach ((int i, DrillNever never) in _drill.MustNever.Index())
        {
            DrillNote[] all = [.. _outcome.Notes.Where(n => n.Kind == DrillNoteKind.Never && n.Number == i)];
            DrillNote? came = all.FirstOrDefault(n => n.At > _known);
            FormattableString evidence = came is not null ? (FormattableString)$"It came about at {At(came.At)}, {At(new(came.At.Ticks - _known!.Value.Ticks))} after it could be known that there was something to do."
                : all.Length > 0 ? (FormattableString)$"It came about at {At(all[0].At)}, before anybody could know: it is not theirs."
                : $"It never came about.";
            _lines.Add(new(EvaluationLayer.Forbidden, $"Must never: {never.Name}", came is null, true, 0, evidence, came?.At, never.Because));
        }

        ImmutableArray<DrillNote> hurt = Of(DrillNoteKind.Injured);
        foreach (DrillNote injured in hurt)
        {
            _lines.Add(new(EvaluationLayer.Forbidden, $"A danger met: {new MechanismWords(injured.What)}", false, true, 0, $"At {At(injured.At)}{Where(injured)}.", injured.At));
        }

        if (hurt.IsEmpty)
        {
            _lines.Add(new(EvaluationLayer.Forbidden, $"Nobody came to harm", true, true, 0, $"No danger of the machine met anybody."));
        }
    }

    private void Authority()
    {
        ImmutableArray<DrillNote> breaches = Of(DrillNoteKind.Breach);
        foreach (DrillNote breach in breaches)
        {
            FormattableString what = (Breach)breach.Number switch
            {
                Breach.MayNot => (FormattableString)$"Operated what is not theirs: {breach.What}",
                Breach.NotPermitted => (FormattableString)$"Operated without the permission that it needs: {breach.What}",
                _ => (FormattableString)$"Took away what others had set: {breach.What}",
            };
            _lines.Add(new(EvaluationLayer.Authority, what, false, true, 0, $"At {At(breach.At)}{Where(breach)}. That it worked does not count.", breach.At));
        }

        if (breaches.IsEmpty)
        {
            _lines.Add(new(EvaluationLayer.Authority, $"Touched only what is theirs, with the permission that it needs", true, true, 0, $"Controls touched: {Of(DrillNoteKind.Touched).Length}."));
        }

        foreach (string kept in _outcome.NotGivenBack)
        {
            _lines.Add(new(EvaluationLayer.Authority, $"Protection given back: {kept}", false, true, 0, $"It was still held at the end.", _ended));
        }
    }

    private void Orders()
    {
        foreach ((int i, DrillOrder order) in _drill.Orders.Index())
        {
            int then = Find(DrillNoteKind.Then, i);
            int first = Find(DrillNoteKind.First, i);
            bool met = then < 0 || (first >= 0 && first < then);
            FormattableString evidence = then < 0 ? (FormattableString)$"It never came to that."
                : met ? (FormattableString)$"First at {At(_outcome.Notes[first].At)}, then at {At(_outcome.Notes[then].At)}."
                : (FormattableString)$"The second came at {At(_outcome.Notes[then].At)}, and the first had not been.";
            _lines.Add(new(EvaluationLayer.Order, $"{order.Name}", met, true, 0, evidence, then < 0 ? null : _outcome.Notes[then].At, order.Because));
        }
    }

    /// <summary>Where there is something to report, the last report is to be right.</summary>
    private void Report()
    {
        if (_drill.Reports.IsEmpty)
        {
            return;
        }

        DrillNote? last = _outcome.Notes.LastOrDefault(n => n.Kind is DrillNoteKind.ReportedRight or DrillNoteKind.ReportedWrong);
        FormattableString evidence = last is null ? (FormattableString)$"Nothing was reported."
            : last.Kind == DrillNoteKind.ReportedRight ? (FormattableString)$"Reported at {At(last.At)}: {_drill.Reports[last.Number].Name}. So it was."
            : (FormattableString)$"Reported at {At(last.At)}: {_drill.Reports[last.Number].Name}. It was not so.";
        _lines.Add(new(
            EvaluationLayer.Result, $"Reported what was found", last?.Kind == DrillNoteKind.ReportedRight, true, ReportWorth, evidence, last?.At ?? _ended, last is null ? "" : _drill.Reports[last.Number].Because));
    }

    private void Results()
    {
        Report();
        foreach ((int i, DrillObjective objective) in _drill.Objectives.Index())
        {
            (bool met, FormattableString evidence, SimTime? at) = Result(i, objective);
            if (!met && _outcome.Notes.LastOrDefault(n => n.Kind == DrillNoteKind.ReportedRight && objective.OrReported.Contains(_drill.Reports[n.Number].Name)) is { } instead)
            {
                (met, evidence, at) = (true, $"It could not be brought about, and that was told at {At(instead.At)}: {_drill.Reports[instead.Number].Name}.", instead.At);
            }

            _lines.Add(new(EvaluationLayer.Result, $"{objective.Name}", met, objective.IsCritical, objective.Worth, evidence, at, objective.Because));
        }
    }

    private (bool IsMet, FormattableString Evidence, SimTime? At) Result(int number, DrillObjective objective)
    {
        DrillNote? reached = objective.Once
            ? _outcome.Notes.FirstOrDefault(n => n.Kind == DrillNoteKind.Reached && n.Number == number)
            : _outcome.Notes.LastOrDefault(n => n.Kind == DrillNoteKind.Reached && n.Number == number);
        DrillNote? lost = _outcome.Notes.LastOrDefault(n => n.Kind == DrillNoteKind.Lost && n.Number == number);
        if (reached is null)
        {
            return (false, $"It never was so.", _ended);
        }

        if (!objective.Once && lost is not null && lost.At > _ended)
        {
            return (false, $"It did not stay so: lost at {At(lost.At)}, after the end was told at {At(_ended!.Value)}.", lost.At);
        }

        if (!objective.Once && !_outcome.Held[number])
        {
            return (false, $"So at {At(reached.At)}, and lost again at {At(lost!.At)}.", lost.At);
        }

        if (reached.At == SimTime.Zero)
        {
            return (true, objective.Once ? (FormattableString)$"So from the start." : $"So from the start to the end.", null);
        }

        if (objective.Within is not { } within || _known is not { } known)
        {
            return (true, objective.Once ? (FormattableString)$"So at {At(reached.At)}." : $"So from {At(reached.At)} to the end.", reached.At);
        }

        SimTime latest = known + SimTime.FromSeconds(within);
        return reached.At <= latest
            ? (true, (FormattableString)$"So from {At(reached.At)}, in time: wanted by {At(latest)}.", reached.At)
            : (false, (FormattableString)$"So from {At(reached.At)}, too late: wanted by {At(latest)}, as it could be known from {At(known)} on.", reached.At);
    }

    /// <summary>Whoever must be told of a control that was operated: a line for each role.</summary>
    private void Told()
    {
        HashSet<string> told = [.. Of(DrillNoteKind.Told).Select(n => n.What)];
        var due = Of(DrillNoteKind.Touched)
            .SelectMany(n => (_bound.Plan.Book.Items[n.What].Authority?.Told ?? []).Select(role => (role, n)))
            .Where(d => d.role != _drill.Role)
            .GroupBy(d => d.role);
        foreach (var role in due)
        {
            DrillNote first = role.First().n;
            _lines.Add(new(
                EvaluationLayer.Told, $"Told the {role.Key}", told.Contains(role.Key), false, 1,
                told.Contains(role.Key) ? (FormattableString)$"They had to know of {first.What}." : $"They had to know of {first.What}, touched at {At(first.At)}.", first.At));
        }
    }

    private void Help()
    {
        foreach (DrillNote hint in Of(DrillNoteKind.Hint))
        {
            _lines.Add(new(
                EvaluationLayer.Help, $"A hint: {_drill.Hints[hint.Number].Says}", !_drill.IsQualifying, _drill.IsQualifying, -_drill.Hints[hint.Number].Costs,
                _drill.IsQualifying ? (FormattableString)$"Taken at {At(hint.At)}. Prompted is not a pass." : $"Taken at {At(hint.At)}.", hint.At));
        }

        foreach (DrillNote taken in Of(DrillNoteKind.TakenOver))
        {
            DrillNote? back = _outcome.Notes.FirstOrDefault(n => n.Kind == DrillNoteKind.HandedBack && n.At >= taken.At);
            _lines.Add(new(
                EvaluationLayer.Help, $"The instructor took over", !_drill.IsQualifying, _drill.IsQualifying, 0,
                back is null ? (FormattableString)$"From {At(taken.At)} to the end." : (FormattableString)$"From {At(taken.At)} to {At(back.At)}.", taken.At));
        }
    }

    private static FormattableString Where(DrillNote note) => note.Place.Length == 0 ? (FormattableString)$", on the way" : $", at {note.Place}";

    private static ClockWords At(SimTime time) => new(time);

    private int Find(DrillNoteKind kind, int number)
    {
        for (int i = 0; i < _outcome.Notes.Length; i++)
        {
            if (_outcome.Notes[i].Kind == kind && _outcome.Notes[i].Number == number)
            {
                return i;
            }
        }

        return -1;
    }

    private DrillNote? First(DrillNoteKind kind) => _outcome.Notes.FirstOrDefault(n => n.Kind == kind);

    private ImmutableArray<DrillNote> Of(DrillNoteKind kind) => [.. _outcome.Notes.Where(n => n.Kind == kind)];
}
