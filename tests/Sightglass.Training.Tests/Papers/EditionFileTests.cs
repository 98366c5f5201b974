using Sightglass.Training.Papers;

namespace Sightglass.Training.Tests.Papers;

/// <summary>A card's way from draft to the pocket and back. Rules: common practice, no source.</summary>
public sealed class EditionFileTests
{
    private static readonly DateTimeOffset s_start = new(2026, 11, 26, 8, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData(PaperState.Draft, PaperState.Reviewed, "B. Ellis", null, null)]
    [InlineData(PaperState.Draft, PaperState.Reviewed, "a. nowak ", null, "A. Nowak wrote it")]
    [InlineData(PaperState.Draft, PaperState.Approved, "B. Ellis", null, "cannot become approved, only reviewed or withdrawn")]
    [InlineData(PaperState.Reviewed, PaperState.Approved, "C. Okafor", null, null)]
    [InlineData(PaperState.Reviewed, PaperState.Approved, " ", null, "Write who approves it")]
    [InlineData(PaperState.Reviewed, PaperState.Draft, "C. Okafor", "step 4 is unclear", null)]
    [InlineData(PaperState.Reviewed, PaperState.Draft, "C. Okafor", null, "Write why")]
    [InlineData(PaperState.Approved, PaperState.Withdrawn, "C. Okafor", "", "Write why")]
    [InlineData(PaperState.Approved, PaperState.Withdrawn, "C. Okafor", "the valve was moved", null)]
    [InlineData(PaperState.Approved, PaperState.Reviewed, "C. Okafor", null, "cannot become reviewed")]
    [InlineData(PaperState.Withdrawn, PaperState.Approved, "C. Okafor", null, "Make a new edition")]
    public void Hindrance_OfAMove_IsToldOrNone(PaperState from, PaperState to, string by, string? note, string? said)
    {
        string? told = PaperMoves.Hindrance(Edition(1), from, to, by, note);
        Assert.Equal(said is null, told is null);
        Assert.Contains(said ?? "", told ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void Hindrance_OfWhatFailsOrWasNeverTried_KeepsFromApproval()
    {
        Assert.Contains("fails in its trial", PaperMoves.Hindrance(Edition(1, passed: false), PaperState.Reviewed, PaperState.Approved, "C. Okafor", null), StringComparison.Ordinal);
        Assert.Contains("never tried", PaperMoves.Hindrance(Edition(1, passed: false, tried: ""), PaperState.Reviewed, PaperState.Approved, "C. Okafor", null), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ANewerApprovedEdition_SupersedesTheOldAndCallsItsCopiesBack()
    {
        PaperEdition old = Edition(1);
        PaperEdition next = Edition(2, text: "Card: B");
        PaperCopy out_ = Copy(old, 1, "D. Reyes");
        PaperCopy back = Copy(old, 2, "E. Holm", back: true);
        PaperEvent[] events = [Moved(old, PaperState.Reviewed, 1), Moved(old, PaperState.Approved, 2), Moved(next, PaperState.Reviewed, 3)];

        EditionFile before = EditionFile.Of([next, old], events, [back, out_], "Card: B")[0];
        Assert.True(before.IsInForce); // The new text is not approved: people work by the old one until it is.
        Assert.Null(before.Warning);
        Assert.Empty(before.ToRecall);
        Assert.Contains("another text by now", before.KeptBack, StringComparison.Ordinal);

        EditionFile[] after = [.. EditionFile.Of([next, old], [.. events, Moved(next, PaperState.Approved, 4)], [back, out_], "Card: B")];
        Assert.Equal(2, after[0].SupersededBy);
        Assert.False(after[0].IsInForce);
        Assert.Equal([out_], after[0].ToRecall);
        Assert.Equal("SUPERSEDED by edition 2. Not to be worked by.", after[0].Warning);
        Assert.True(after[1].IsInForce);
        Assert.Null(after[1].KeptBack);
    }

    [Fact]
    public void History_OfAnEdition_NamesPeopleAndDays()
    {
        PaperEdition edition = Edition(1);
        EditionFile file = EditionFile.Of([edition], [Moved(edition, PaperState.Reviewed, 24), Moved(edition, PaperState.Approved, 48), Moved(edition, PaperState.Withdrawn, 72, "the valve was moved")], [Copy(edition, 1, "D. Reyes")], "Card: A")[0];
        Assert.Equal(
            ["Edition 1, written by A. Nowak, 2026-11-26.", "Reviewed by P2, 2026-11-27.", "Approved by P3, 2026-11-28.", "Withdrawn by P4, 2026-11-29: the valve was moved."],
            file.History.Select(h => h.Replace("P24", "P2", StringComparison.Ordinal).Replace("P48", "P3", StringComparison.Ordinal).Replace("P72", "P4", StringComparison.Ordinal)));
        Assert.Equal("WITHDRAWN. Not to be worked by.", file.Warning);
        Assert.Single(file.ToRecall);
    }

    /// <summary>Whatever happens, at most one edition of a card is in force, and no copy of another is left unasked for.</summary>
    [Fact]
    public void Of_AllWaysOfThreeEditions_KeepOneInForce()
    {
        PaperState[] states = Enum.GetValues<PaperState>();
        foreach (PaperState a in states)
        {
            foreach (PaperState b in states)
            {
                foreach (PaperState c in states)
                {
                    PaperEdition[] editions = [Edition(1), Edition(2), Edition(3)];
                    PaperEvent[] events = [Moved(editions[0], a, 1), Moved(editions[1], b, 2), Moved(editions[2], c, 3)];
                    EditionFile[] files = [.. EditionFile.Of(editions, events, editions.Select(e => Copy(e, 1, "D. Reyes")), "Card: A")];
                    Assert.InRange(files.Count(f => f.IsInForce), 0, 1);
                    Assert.All(files.Where(f => f.IsInForce), f => Assert.Empty(f.ToRecall));
                    Assert.All(files.Where(f => f.State is PaperState.Withdrawn), f => Assert.Single(f.ToRecall));
                    Assert.All(files, f => Assert.Equal(f.IsInForce, f.Warning is null));
                }
            }
        }
    }

    private static PaperEdition Edition(int number, bool passed = true, string tried = "Tried by simulation in 512 cases.", string text = "Card: A") => new()
    {
        Id = new Guid(number, 0, 0, new byte[8]),
        Book = "Curlew",
        Card = "A",
        Text = text,
        TextHash = EditionFile.HashOf(text),
        BookEdition = "0123",
        Tried = tried,
        Passed = passed,
        By = "A. Nowak",
        MadeAt = s_start.AddMinutes(number),
    };

    private static PaperEvent Moved(PaperEdition edition, PaperState state, int hours, string? note = null) =>
        new() { Id = new Guid(hours, 1, 0, new byte[8]), Edition = edition.Id, State = state, By = $"P{hours}", At = s_start.AddHours(hours), Note = note };

    private static PaperCopy Copy(PaperEdition edition, int number, string holder, bool back = false) =>
        new() { Id = new Guid(number, 2, (short)edition.Id.GetHashCode(), new byte[8]), Edition = edition.Id, Number = number, Holder = holder, GivenAt = s_start.AddDays(3), BackAt = back ? s_start.AddDays(4) : null };
}
