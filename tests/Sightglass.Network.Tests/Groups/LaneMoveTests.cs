using Sightglass.Basics.Numbers;
using Sightglass.Basics.Time;
using Sightglass.Network.Groups;

namespace Sightglass.Network.Tests.Groups;

/// <summary>Lanes of several groups that take their attempts together come to what each comes to alone.</summary>
public sealed class LaneMoveTests
{
    private const int Groups = 3;
    private static readonly SimTime s_look = SimTime.FromSeconds(333.3);
    private static readonly SimTime s_end = SimTime.FromSeconds(900);

    [Fact]
    public void IterateFor_LanesOfThreeGroups_SameBitsAsAlone()
    {
        Rig rig = new();
        LaneGroup[] groups = [.. Enumerable.Range(0, Groups).Select(_ => Group(rig))];
        using LaneGroup together = Group(rig);
        Course[] courses = [.. Enumerable.Range(0, Groups * Lanes.Count).Select(i => new Course(rig, groups[i / Lanes.Count], i % Lanes.Count, i))];
        Random chance = new(3);
        LanePick pick = new(Groups);
        int rounds = 0;
        for (; courses.Any(c => !c.IsOver); rounds++)
        {
            Array.ForEach(courses, c => c.GoOn());
            pick.Clear();
            int[] order = [.. Enumerable.Range(0, courses.Length)];
            chance.Shuffle(order);
            foreach (int i in order.Where(i => groups[i / Lanes.Count].Task(i % Lanes.Count) != LaneTask.None).Take(Lanes.Count))
            {
                pick.Add(i / Lanes.Count, i % Lanes.Count);
            }

            together.IterateFor(groups, pick);
        }

        Assert.True(rounds > 100, $"only {rounds} attempts, so little was tried");
        foreach (Course course in courses)
        {
            using LaneGroup own = Group(rig);
            Course alone = new(rig, own, 2, course.Number);
            while (!alone.IsOver)
            {
                alone.GoOn();
                own.Iterate();
            }

            Assert.Equal(alone.Seen, course.Seen);
        }

        Array.ForEach(groups, g => g.Dispose());
    }

    private static LaneGroup Group(Rig rig)
    {
        LaneGroup group = new(rig.Topology);
        group.AddGuard(new LevelGuard(rig.Tank, Rig.Density * Rig.Area * 0.9, -1));
        group.AddGuard(new LevelGuard(rig.Tank, Rig.Density * Rig.Area * 0.6, -1));
        return group;
    }

    /// <summary>A tank that runs out with an opening of its own, one guard or both armed, is looked at once on the way, cut at the end, and notes all that can be seen.</summary>
    private sealed class Course
    {
        private readonly Rig _rig;
        private readonly LaneGroup _group;
        private readonly int _lane;
        private bool _looks;
        private bool _cuts;
        private bool _looked;

        public Course(Rig rig, LaneGroup group, int lane, int number)
        {
            (_rig, _group, _lane, Number) = (rig, group, lane, number);
            group.SetInput(lane, rig.Opening, 0.2 + (0.13 * number));
            group.SetParameter(lane, 0, group.GetParameter(lane, 0) * (1 + (0.001 * number)));
            group.Arm(lane, 0, number % 3 != 0);
            group.Arm(lane, 1, number % 2 == 0);
        }

        public int Number { get; }

        public List<string> Seen { get; } = [];

        public bool IsOver => !_cuts && _group.Time(_lane) >= s_end;

        public void GoOn()
        {
            while (_group.Task(_lane) == LaneTask.None && !IsOver)
            {
                if (_looks || _cuts)
                {
                    (_looks, _cuts) = (false, false);
                    Note();
                    continue;
                }

                SimTime end = _group.PendingEnd(_lane);
                if (end == SimTime.Never)
                {
                    _group.Propose(_lane);
                }
                else if (!_looked && end > s_look)
                {
                    (_looked, _looks) = (true, true);
                    _group.Peek(_lane, s_look);
                }
                else if (end >= s_end)
                {
                    _cuts = end > s_end;
                    _group.Cut(_lane, s_end);
                }
                else
                {
                    Note();
                    _group.Commit(_lane);
                }
            }
        }

        private void Note() => Seen.Add(FormattableString.Invariant(
            $"{_group.Time(_lane).Ticks} {_group.Steps(_lane)} {_group.Attempts(_lane)} {_group.HasFired(_lane, 0)} {_group.HasFired(_lane, 1)} {_group.GetAmount(_lane, _rig.Tank):R} {_group.End.AmountOf(_rig.Tank)[_lane]:R} {_group.End.PotentialOf(_rig.Tank)[_lane]:R} {_group.End.FlowOf(_rig.Hole)[_lane]:R}"));
    }
}
