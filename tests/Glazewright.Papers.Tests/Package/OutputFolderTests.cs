using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;
using Glazewright.Papers.Package;

namespace Glazewright.Papers.Tests.Package;

/// <summary>A package is written as a whole or not at all; nothing of the user's is touched.</summary>
public sealed class OutputFolderTests : IDisposable
{
    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-out-").FullName;

    private string Target => Path.Combine(_room, "pack age");

    public void Dispose() => Directory.Delete(_room, recursive: true);

    [Fact]
    public void A_new_package_has_its_files_and_a_manifest_and_leaves_nothing_beside_it()
    {
        Write(Target, ("answers.pdf", "one"), ("drawings/plan.svg", "two"));
        Assert.Equal(["answers.pdf", "drawings/plan.svg", "manifest.json"], Files(Target));
        PackageManifest manifest = PackageManifest.Of(Target)!;
        Assert.Equal(["answers.pdf", "drawings/plan.svg"], manifest.Entries.Select(e => e.Name).ToArray());
        // sha256sum of "one".
        Assert.Equal("7692c3ad3540bb803c020b3aee66cd8887123234ea0c6e7143c0add73ff431ed", manifest.Entries[0].Sha256);
        Assert.Equal(["pack age"], Directory.GetFileSystemEntries(_room).Select(Path.GetFileName).ToArray());
    }

    [Fact]
    public void A_second_package_replaces_its_own_files_and_keeps_the_users()
    {
        Write(Target, ("answers.pdf", "one"), ("drawings/plan.svg", "two"));
        File.WriteAllText(Path.Combine(Target, "notes.txt"), "mine");
        File.WriteAllText(Path.Combine(Target, "drawings", "sketch.txt"), "mine too");
        Directory.CreateDirectory(Path.Combine(Target, "photos"));
        Write(Target, ("answers.pdf", "three"));
        Assert.Equal(["answers.pdf", "drawings/sketch.txt", "manifest.json", "notes.txt"], Files(Target));
        Assert.Equal("three", File.ReadAllText(Path.Combine(Target, "answers.pdf")));
        Assert.True(Directory.Exists(Path.Combine(Target, "photos")));
    }

    [Fact]
    public void An_empty_folder_is_taken_and_a_folder_of_others_is_refused()
    {
        Directory.CreateDirectory(Target);
        Write(Target, ("a.txt", "x"));
        string other = Path.Combine(_room, "other");
        Directory.CreateDirectory(other);
        File.WriteAllText(Path.Combine(other, "thesis.doc"), "years of work");
        Assert.Equal(OutputProblemKind.NotOurs, Refused(other).Kind);
        Assert.Equal(["thesis.doc"], Files(other));
    }

    [Fact]
    public void A_manifest_of_something_else_does_not_make_a_folder_ours()
    {
        Directory.CreateDirectory(Target);
        File.WriteAllText(Path.Combine(Target, "manifest.json"), "{ \"name\": \"web app\" }");
        Assert.Equal(OutputProblemKind.NotOurs, Refused(Target).Kind);
    }

    [Fact]
    public void A_file_in_the_way_is_refused()
    {
        File.WriteAllText(Target, "x");
        Assert.Equal(OutputProblemKind.NotAFolder, Refused(Target).Kind);
        Assert.Equal("x", File.ReadAllText(Target));
    }

    [Fact]
    public void A_users_file_where_a_new_one_belongs_is_refused_and_the_earlier_package_stands()
    {
        Write(Target, ("answers.pdf", "one"));
        File.WriteAllText(Path.Combine(Target, "price.csv"), "mine");
        Assert.True(OutputFolder.TryOpen(Target, out OutputFolder? folder, out _));
        using (folder)
        {
            folder.Add("price.csv", "ours"u8);
            Assert.False(folder.TryFinish(out OutputProblem? problem));
            Assert.Equal(OutputProblemKind.NameTaken, problem.Kind);
        }

        Assert.Equal(["answers.pdf", "manifest.json", "price.csv"], Files(Target));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(Target, "price.csv")));
        Assert.Single(Directory.GetFileSystemEntries(_room));
    }

    [Fact]
    public void A_file_edited_by_hand_is_kept_beside_the_new_one_and_told()
    {
        Write(Target, ("answers.pdf", "one"), ("drawings/plan.svg", "two"), ("gone.csv", "three"));
        File.WriteAllText(Path.Combine(Target, "drawings", "plan.svg"), "with my dimensions");
        File.WriteAllText(Path.Combine(Target, "gone.csv"), "my numbers");
        Assert.Equal(["drawings/plan.edited.svg", "gone.edited.csv"], Write(Target, ("answers.pdf", "one"), ("drawings/plan.svg", "four")));
        Assert.Equal("with my dimensions", File.ReadAllText(Path.Combine(Target, "drawings", "plan.edited.svg")));
        Assert.Equal("four", File.ReadAllText(Path.Combine(Target, "drawings", "plan.svg")));
        Assert.Equal("my numbers", File.ReadAllText(Path.Combine(Target, "gone.edited.csv")));

        // A second edit does not overwrite the first one's copy; the copies themselves are the user's and stay.
        File.WriteAllText(Path.Combine(Target, "drawings", "plan.svg"), "again");
        Assert.Equal(["drawings/plan.edited-2.svg"], Write(Target, ("answers.pdf", "one"), ("drawings/plan.svg", "four")));
        Assert.Empty(Write(Target, ("answers.pdf", "two"), ("drawings/plan.svg", "four")));
        Assert.Equal(
            ["answers.pdf", "drawings/plan.edited-2.svg", "drawings/plan.edited.svg", "drawings/plan.svg", "gone.edited.csv", "manifest.json"], Files(Target));
    }

    [Fact]
    public void A_damaged_manifest_is_called_damaged_not_missing()
    {
        Write(Target, ("answers.pdf", "one"));
        string manifest = Path.Combine(Target, "manifest.json");
        File.WriteAllText(manifest, File.ReadAllText(manifest)[..40]);
        OutputProblem problem = Refused(Target);
        Assert.Equal(OutputProblemKind.NotOurs, problem.Kind);
        Assert.Contains("damaged", problem.Wrong, StringComparison.Ordinal);
        Assert.DoesNotContain("missing", problem.Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_below_a_file_and_a_link_to_nothing_are_told_as_what_they_are()
    {
        string file = Path.Combine(_room, "afile");
        File.WriteAllText(file, "x");
        OutputProblem below = Refused(Path.Combine(file, "sub"));
        Assert.Equal(OutputProblemKind.NotAFolder, below.Kind);
        Assert.Contains("is a file", below.Wrong, StringComparison.Ordinal);
        string link = Path.Combine(_room, "link");
        File.CreateSymbolicLink(link, "nowhere");
        foreach (string target in (string[])[link, Path.Combine(link, "sub")])
        {
            OutputProblem dangling = Refused(target);
            Assert.Equal(OutputProblemKind.NotAFolder, dangling.Kind);
            Assert.Contains("a link to 'nowhere', which does not exist", dangling.Wrong, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(300), InlineData(245)]
    public void A_name_that_the_disk_does_not_take_is_told(int characters)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "other limits hold there");
        OutputProblem problem = Refused(Path.Combine(_room, new string('n', characters)));
        Assert.Equal(OutputProblemKind.NameTooLong, problem.Kind);
        Assert.True(problem.Wrong.Length < 300);
    }

    // The right to rename a folder comes from its parent: the swap would go through, and the earlier package could then never be emptied.
    [Fact]
    public void An_earlier_package_of_another_user_in_a_folder_of_ours_is_refused_before_the_swap()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.UserName == "root", "acting as another user needs root on Linux");
        Write(Target, ("answers.pdf", "one"), ("drawings/plan.svg", "two"));
        Run("chmod", "777", _room);
        OutputProblem? problem;
        const uint Nobody = 65534;
        ActAs(Nobody);
        try
        {
            Assert.False(OutputFolder.TryOpen(Target, out _, out problem));
        }
        finally
        {
            ActAs(0);
        }

        Assert.Equal(OutputProblemKind.NotWritable, problem.Kind);
        Assert.Contains("may not replace", problem.Wrong, StringComparison.Ordinal);
        Assert.Equal(["answers.pdf", "drawings/plan.svg", "manifest.json"], Files(Target));
        Assert.Single(Directory.GetFileSystemEntries(_room));
    }

    [Fact]
    public void A_package_that_is_dropped_leaves_the_earlier_one()
    {
        Write(Target, ("answers.pdf", "one"));
        Assert.True(OutputFolder.TryOpen(Target, out OutputFolder? folder, out _));
        folder.Add("answers.pdf", "half"u8);
        folder.Dispose();
        Assert.Equal("one", File.ReadAllText(Path.Combine(Target, "answers.pdf")));
        Assert.Single(Directory.GetFileSystemEntries(_room));
    }

    [Fact]
    public void A_run_that_died_while_building_is_cleaned_up()
    {
        Write(Target, ("answers.pdf", "one"));
        Directory.CreateDirectory(Beside("new"));
        File.WriteAllText(Path.Combine(Beside("new"), "answers.pdf"), "half");
        Write(Target, ("answers.pdf", "two"));
        Assert.Equal("two", File.ReadAllText(Path.Combine(Target, "answers.pdf")));
        Assert.Single(Directory.GetFileSystemEntries(_room));
    }

    [Fact]
    public void A_run_that_died_between_the_renames_gets_the_earlier_package_back()
    {
        Write(Target, ("answers.pdf", "one"));
        File.WriteAllText(Path.Combine(Target, "notes.txt"), "mine");
        Directory.Move(Target, Beside("old"));
        Directory.CreateDirectory(Beside("new"));
        Assert.True(OutputFolder.TryOpen(Target, out OutputFolder? folder, out _));
        folder.Dispose();
        Assert.Equal(["answers.pdf", "manifest.json", "notes.txt"], Files(Target));
        Assert.Single(Directory.GetFileSystemEntries(_room));
    }

    [Fact]
    public void A_run_that_died_after_the_renames_has_the_users_files_carried_over()
    {
        Write(Target, ("answers.pdf", "one"));
        File.WriteAllText(Path.Combine(Target, "notes.txt"), "mine");
        Directory.Move(Target, Beside("old"));
        Write(Path.Combine(_room, "elsewhere"), ("answers.pdf", "two"));
        Directory.Move(Path.Combine(_room, "elsewhere"), Target);
        Assert.True(OutputFolder.TryOpen(Target, out OutputFolder? folder, out _));
        folder.Dispose();
        Assert.Equal(["answers.pdf", "manifest.json", "notes.txt"], Files(Target));
        Assert.Equal("two", File.ReadAllText(Path.Combine(Target, "answers.pdf")));
        Assert.Single(Directory.GetFileSystemEntries(_room));
    }

    [Fact]
    public void Two_runs_at_once_do_not_mix()
    {
        Assert.True(OutputFolder.TryOpen(Target, out OutputFolder? first, out _));
        using (first)
        {
            Assert.Equal(OutputProblemKind.Busy, Refused(Target).Kind);
        }

        Write(Target, ("a.txt", "x"));
    }

    [Fact]
    public void A_link_to_a_folder_is_followed()
    {
        string real = Path.Combine(_room, "real");
        Directory.CreateDirectory(real);
        Directory.CreateSymbolicLink(Target, real);
        Write(Target, ("a.txt", "x"));
        Assert.Equal(["a.txt", "manifest.json"], Files(real));
        Assert.NotNull(new DirectoryInfo(Target).LinkTarget);
    }

    [Theory]
    [InlineData("../escape.txt"), InlineData("/etc/escape"), InlineData("a//b"), InlineData(""), InlineData("manifest.json"), InlineData("a\\b"), InlineData("./a")]
    public void A_name_that_leaves_the_package_is_the_programmers_mistake(string name)
    {
        Assert.True(OutputFolder.TryOpen(Target, out OutputFolder? folder, out _));
        using (folder)
        {
            Assert.ThrowsAny<ArgumentException>(() => folder.Add(name, "x"u8));
        }
    }

    [Fact]
    public void A_folder_without_the_right_to_write_is_told()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "rights are told by mode bits");
        Assert.SkipWhen(Environment.UserName == "root", "root may write everywhere");
        string closed = Path.Combine(_room, "closed");
        Directory.CreateDirectory(closed);
        Run("chmod", "555", closed);
        Assert.Equal(OutputProblemKind.NotWritable, Refused(Path.Combine(closed, "out")).Kind);
        Run("chmod", "755", closed);
    }

    [Fact]
    public void A_full_disk_leaves_the_earlier_package_untouched()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.UserName == "root", "mounting a small disk needs root on Linux");
        string disk = Path.Combine(_room, "disk");
        Directory.CreateDirectory(disk);
        Assert.SkipUnless(Run("mount", "-t", "tmpfs", "-o", "size=256k", "tmpfs", disk), "a small disk could not be mounted here");
        try
        {
            string target = Path.Combine(disk, "out");
            Write(target, ("answers.pdf", "one"));
            Assert.True(OutputFolder.TryOpen(target, out OutputFolder? folder, out _));
            using (folder)
            {
                byte[] much = new byte[1_000_000];
                OutputProblemException full = Assert.Throws<OutputProblemException>(() => folder.Add("answers.pdf", much));
                Assert.Equal(OutputProblemKind.DiskFull, full.Problem.Kind);
                Assert.Contains("untouched", full.Problem.Right, StringComparison.Ordinal);
            }

            Assert.Equal("one", File.ReadAllText(Path.Combine(target, "answers.pdf")));
            Assert.Single(Directory.GetFileSystemEntries(disk));

            // Where there is no earlier package none is spoken of.
            Assert.True(OutputFolder.TryOpen(Path.Combine(disk, "first"), out folder, out _));
            using (folder)
            {
                byte[] much = new byte[1_000_000];
                Assert.DoesNotContain("earlier", Assert.Throws<OutputProblemException>(() => folder.Add("answers.pdf", much)).Problem.Right, StringComparison.Ordinal);
            }
        }
        finally
        {
            Run("umount", disk);
        }
    }

    [Fact]
    public void A_disk_that_cannot_be_written_is_told()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.UserName == "root", "mounting a read-only disk needs root on Linux");
        string disk = Path.Combine(_room, "closed disk");
        Directory.CreateDirectory(disk);
        Assert.SkipUnless(Run("mount", "-t", "tmpfs", "-o", "ro", "tmpfs", disk), "a read-only disk could not be mounted here");
        try
        {
            Assert.Equal(OutputProblemKind.NotWritable, Refused(Path.Combine(disk, "out")).Kind);
        }
        finally
        {
            Run("umount", disk);
        }
    }

    private static bool Run(string program, params string[] arguments)
    {
        using Process? process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true });
        process?.WaitForExit();
        return process?.ExitCode == 0;
    }

    // For this thread's file access alone; capabilities to pass over rights go with it and come back.
    [DllImport("libc", EntryPoint = "setfsuid")]
    private static extern int ActAs(uint user);

    // What a user keeps beside the contractor's package is carried over: it must not slip into a set that is handed on.
    [Fact]
    public void A_set_never_takes_the_place_of_another_readers_package()
    {
        Write(Target, ("price.csv", "secret"));
        File.WriteAllText(Path.Combine(Target, "margin.txt"), "mine");
        Assert.False(OutputFolder.TryOpen(Target, out _, out OutputProblem? problem, "grower"));
        Assert.Equal(OutputProblemKind.OtherReader, problem.Kind);

        string set = Path.Combine(_room, "set");
        for (int again = 0; again < 2; again++)
        {
            Assert.True(OutputFolder.TryOpen(set, out OutputFolder? folder, out problem, "grower"), problem?.Wrong);
            using (folder)
            {
                folder.Add("report.pdf", "one"u8);
                Assert.True(folder.TryFinish(out problem), problem?.Wrong);
            }
        }

        Assert.Equal("grower", PackageManifest.Of(set)!.Set);
        Assert.False(OutputFolder.TryOpen(set, out _, out problem, "crew"));
        Assert.Equal(OutputProblemKind.OtherReader, problem.Kind);
        Assert.Equal(OutputProblemKind.OtherReader, Refused(set).Kind);
    }

    private static string[] Write(string target, params (string Name, string Text)[] files)
    {
        Assert.True(OutputFolder.TryOpen(target, out OutputFolder? folder, out OutputProblem? problem), problem?.Wrong);
        using (folder)
        {
            foreach ((string name, string text) in files)
            {
                folder.Add(name, Encoding.UTF8.GetBytes(text));
            }

            Assert.True(folder.TryFinish(out problem), problem?.Wrong);
            return [.. folder.KeptCopies.Order(StringComparer.Ordinal)];
        }
    }

    private static OutputProblem Refused(string target)
    {
        Assert.False(OutputFolder.TryOpen(target, out _, out OutputProblem? problem));
        Assert.NotEqual("", problem.Right);
        Assert.False(problem.Wrong.EndsWith('.') || problem.Right.EndsWith('.'), "the full stop is the door's");
        return problem;
    }

    private static string[] Files(string folder) =>
        [.. Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f)).Order(StringComparer.Ordinal)];

    private string Beside(string what) => Path.Combine(_room, $".pack age.glazewright-{what}");
}
