using System.Security.Cryptography;
using Analytics.Planning;
using Analytics.Planning.Exercises;
using Analytics.Planning.Rooms;
using Analytics.Season.Files;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>The files of the folder <c>training</c> that come with the kit; they stand in for those a season does not have.</summary>
public static class ShippedTraining
{
    private static readonly Lazy<TrainingSettings> InPounds = new(() => Read("lb"));
    private static readonly Lazy<TrainingSettings> InKilograms = new(() => Read("kg"));

    /// <summary>Text of a file, to be written into a season and edited: <c>exercises.csv</c>, <c>schemes.csv</c>, <c>day-kinds.csv</c>, <c>week-shapes.csv</c>, <c>rules.csv</c>, <c>rooms.csv</c>, <c>weights-lb.csv</c>, <c>weights-kg.csv</c>.</summary>
    /// <param name="file">Name of the file.</param>
    /// <exception cref="ArgumentException">There is no such file.</exception>
    public static string Text(string file)
    {
        using var stream = typeof(ShippedTraining).Assembly.GetManifestResourceStream($"{TrainingFolder.Name}/{file}") ?? throw new ArgumentException($"No file '{file}' comes with the kit.", nameof(file));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>The shipped settings.</summary>
    /// <param name="massUnit">Unit the weights are marked in: <c>lb</c> or <c>kg</c>.</param>
    internal static TrainingSettings In(string massUnit) => (massUnit == "kg" ? InKilograms : InPounds).Value;

    /// <summary>Reads the shipped files as those of a season are read.</summary>
    /// <param name="intake">Counts and remarks; the tables are open, so no folder is needed.</param>
    /// <param name="massUnit">Unit of the weights.</param>
    internal static TrainingSettings Read(SeasonIntake intake, string massUnit)
    {
        var exercises = new ExerciseCatalogue(ExercisesReader.Read(intake, Table("exercises.csv")));
        var kinds = DayKindsReader.Read(intake, Table("day-kinds.csv"));
        return new TrainingSettings
        {
            Exercises = exercises,
            Schemes = SchemesReader.Read(intake, Table("schemes.csv")),
            Kinds = kinds,
            Shapes = WeekShapesReader.Read(intake, Table("week-shapes.csv"), [.. kinds.Select(k => k.Id)]),
            Rooms = RoomsReader.Read(intake, Table("rooms.csv")),
            Weights = WeightsReader.Read(intake, Table($"weights-{massUnit}.csv"), TrainingReader.Implements(exercises))!,
        };
    }

    private static TrainingSettings Read(string massUnit)
    {
        var intake = new SeasonIntake(null!, CancellationToken.None);
        var settings = Read(intake, massUnit);
        return intake.Files.All(f => !f.HeldBack.Any()) ? settings : throw new InvalidOperationException("A shipped training file is at fault.");
    }

    private static Table[] Table(string file)
    {
        var bytes = System.Text.Encoding.UTF8.GetBytes(Text(file));
        return [CsvTable.Open(new FileContent($"{TrainingFolder.Name}/{file}", bytes, Convert.ToHexStringLower(SHA256.HashData(bytes))), out _)];
    }
}
