using Microsoft.EntityFrameworkCore;
using Sightglass.Training.Bets;
using Sightglass.Training.Defects;
using Sightglass.Training.Lessons;
using Sightglass.Training.Papers;
using Sightglass.Training.Proposals;
using Sightglass.Training.Questions;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Storage;

/// <summary>What is kept in the database. What each is stands in Training; here stands only how it is laid down.</summary>
public sealed class RecordsContext(string connection) : DbContext
{
    public DbSet<WalkDownEntry> WalkDownEntries => Set<WalkDownEntry>();

    public DbSet<Proposal> Proposals => Set<Proposal>();

    public DbSet<PaperEdition> PaperEditions => Set<PaperEdition>();

    public DbSet<PaperEvent> PaperEvents => Set<PaperEvent>();

    public DbSet<PaperCopy> PaperCopies => Set<PaperCopy>();

    public DbSet<OpenQuestion> Questions => Set<OpenQuestion>();

    public DbSet<Defect> Defects => Set<Defect>();

    public DbSet<SavedLesson> Lessons => Set<SavedLesson>();

    public DbSet<LessonEdit> LessonEdits => Set<LessonEdit>();

    public DbSet<BetRound> BetRounds => Set<BetRound>();

    protected override void OnConfiguring(DbContextOptionsBuilder optionsBuilder) => optionsBuilder.UseSqlite(connection);

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcTicks>();
        configurationBuilder.Properties<Enum>().HaveConversion<string>();
    }

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        // Ids are given by whoever makes a thing, a phone without a network among them.
        foreach (Microsoft.EntityFrameworkCore.Metadata.IMutableProperty key in modelBuilder.Model.GetEntityTypes().SelectMany(t => t.FindPrimaryKey()!.Properties))
        {
            key.ValueGenerated = Microsoft.EntityFrameworkCore.Metadata.ValueGenerated.Never;
        }

        modelBuilder.Entity<WalkDownEntry>().HasIndex(e => e.Book);
        modelBuilder.Entity<Proposal>().HasIndex(p => new { p.Book, p.State });
        modelBuilder.Entity<Proposal>().HasIndex(p => new { p.Book, p.Number }).IsUnique();
        modelBuilder.Entity<PaperEdition>().HasIndex(e => new { e.Book, e.Card });
        modelBuilder.Entity<PaperEvent>().HasOne<PaperEdition>().WithMany().HasForeignKey(e => e.Edition).OnDelete(DeleteBehavior.Restrict);
        modelBuilder.Entity<PaperCopy>().HasOne<PaperEdition>().WithMany().HasForeignKey(c => c.Edition).OnDelete(DeleteBehavior.Restrict);
        modelBuilder.Entity<PaperCopy>().HasIndex(c => new { c.Edition, c.Number }).IsUnique();
        modelBuilder.Entity<OpenQuestion>().HasIndex(q => q.Book);
        modelBuilder.Entity<Defect>().HasIndex(d => new { d.Book, d.RoadNumber });
        modelBuilder.Entity<SavedLesson>().HasIndex(l => l.Book);
        modelBuilder.Entity<LessonEdit>().HasOne<SavedLesson>().WithMany().HasForeignKey(e => e.Lesson).OnDelete(DeleteBehavior.Cascade);
        modelBuilder.Entity<BetRound>().HasIndex(r => r.Book);
    }
}
