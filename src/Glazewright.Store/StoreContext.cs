using Microsoft.EntityFrameworkCore;

namespace Glazewright.Store;

/// <summary>The tables, the same on SQLite and PostgreSQL. Made and brought up to date by <see cref="StoreSchema"/>.</summary>
/// <param name="options">Which database.</param>
internal sealed class StoreContext(DbContextOptions<StoreContext> options) : DbContext(options)
{
    public DbSet<JobRow> Jobs => Set<JobRow>();

    public DbSet<EditRow> Edits => Set<EditRow>();

    public DbSet<RevisionRow> Revisions => Set<RevisionRow>();

    public DbSet<MadePapersRow> MadePapers => Set<MadePapersRow>();

    public DbSet<LibraryRow> Library => Set<LibraryRow>();

    public DbSet<LibraryYearRow> LibraryYears => Set<LibraryYearRow>();

    public DbSet<EndedSignInRow> EndedSignIns => Set<EndedSignInRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<JobRow>(t =>
        {
            t.ToTable("jobs").HasKey(r => r.Id);
            t.Property(r => r.Id).HasColumnName("id");
            t.Property(r => r.Name).HasColumnName("name");
            t.Property(r => r.Status).HasColumnName("status").IsConcurrencyToken();
            t.Property(r => r.Version).HasColumnName("version").IsConcurrencyToken();
            t.Property(r => r.Text).HasColumnName("text");
            t.Property(r => r.ChangedMs).HasColumnName("changed_ms");
        });
        modelBuilder.Entity<EditRow>(t =>
        {
            t.ToTable("edits").HasKey(r => new { r.JobId, r.Version });
            t.HasOne<JobRow>().WithMany().HasForeignKey(r => r.JobId);
            t.Property(r => r.JobId).HasColumnName("job_id");
            t.Property(r => r.Version).HasColumnName("version").ValueGeneratedNever();
            t.Property(r => r.What).HasColumnName("what");
            t.Property(r => r.Pointers).HasColumnName("pointers");
            t.Property(r => r.EditedBy).HasColumnName("edited_by");
            t.Property(r => r.AtMs).HasColumnName("at_ms");
            t.Property(r => r.Text).HasColumnName("text");
        });
        modelBuilder.Entity<RevisionRow>(t =>
        {
            t.ToTable("revisions").HasKey(r => new { r.JobId, r.Version });
            t.HasOne<JobRow>().WithMany().HasForeignKey(r => r.JobId);
            t.Property(r => r.JobId).HasColumnName("job_id");
            t.Property(r => r.Version).HasColumnName("version").ValueGeneratedNever();
            t.Property(r => r.Mark).HasColumnName("mark");
            t.Property(r => r.Note).HasColumnName("note");
            t.Property(r => r.AtMs).HasColumnName("at_ms");
        });
        modelBuilder.Entity<MadePapersRow>(t =>
        {
            t.ToTable("made_papers").HasKey(r => new { r.JobId, r.Version });
            t.Property(r => r.JobId).HasColumnName("job_id");
            t.Property(r => r.Version).HasColumnName("version").ValueGeneratedNever();
            t.Property(r => r.Sha256).HasColumnName("sha256");
            t.Property(r => r.AtMs).HasColumnName("at_ms");
        });
        modelBuilder.Entity<LibraryRow>(t =>
        {
            t.ToTable("library").HasKey(r => new { r.Kind, r.Sha256 });
            t.Property(r => r.Kind).HasColumnName("kind");
            t.Property(r => r.Sha256).HasColumnName("sha256");
            t.Property(r => r.Name).HasColumnName("name");
            t.Property(r => r.AtMs).HasColumnName("at_ms");
            t.Property(r => r.Content).HasColumnName("content");
        });
        modelBuilder.Entity<LibraryYearRow>(t =>
        {
            t.ToTable("library_years").HasKey(r => r.Sha256);
            t.Property(r => r.Sha256).HasColumnName("sha256");
            t.Property(r => r.Form).HasColumnName("form");
            t.Property(r => r.Name).HasColumnName("name");
            t.Property(r => r.Region).HasColumnName("region");
            t.Property(r => r.Country).HasColumnName("country");
            t.Property(r => r.Source).HasColumnName("source");
            t.Property(r => r.StationId).HasColumnName("station_id");
            t.Property(r => r.LatitudeDeg).HasColumnName("latitude_deg");
            t.Property(r => r.LongitudeDeg).HasColumnName("longitude_deg");
            t.Property(r => r.ZoneH).HasColumnName("zone_h");
            t.Property(r => r.ElevationM).HasColumnName("elevation_m");
            t.Property(r => r.Origin).HasColumnName("origin");
            t.Property(r => r.RowYears).HasColumnName("row_years");
        });
        modelBuilder.Entity<EndedSignInRow>(t =>
        {
            t.ToTable("ended_sign_ins").HasKey(r => r.Id);
            t.Property(r => r.Id).HasColumnName("id");
            t.Property(r => r.UntilMs).HasColumnName("until_ms");
        });
    }
}
