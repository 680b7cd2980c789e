using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Simulation.Clips.Camera;
using Analytics.Simulation.Clips.Motion;
using Analytics.Simulation.Clips.Reading;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Clips.Study;

/// <summary>One made-up repetition filmed and read, as the library gets it, with what truly happened.</summary>
/// <param name="Trial">What was read.</param>
/// <param name="Run">The truth.</param>
/// <param name="WeighedMass">Body mass by the scales.</param>
public sealed record FilmedRepetition(ContactTrial Trial, RunIntoContact Run, Mass WeighedMass)
{
    /// <summary>Draws a player, films him and reads the clip twice.</summary>
    public static FilmedRepetition Draw(ClipCase how, ulong seed, int number)
    {
        var random = RandomNumbers.For(seed, "clip " + how.Name, number, (int)how.RateHertz);
        var run = RunDraw.Anybody(random);
        var left = random.Chance(0.5);
        var clip = new Recording(run, how.Camera(left), FrameTimes.Draw(how.RateHertz, -0.15, run.ContactSeconds + 0.3, random, how.DropChance));
        var tracks = new Digitiser(how.ClickSdPixels, WholePixels: false).Read(clip, how.Markers, random);
        var reader = new EventReader(how.SlipChance);
        var clock = FrameClock.FromTimeStamps(clip.Stamps);
        var geometry = new ClipGeometry
        {
            Scale = LengthScale.FromEnds(Length.FromMetres(Recording.StickMetres), tracks.Single(t => t.Role == MarkerRole.CalibrationFrom), tracks.Single(t => t.Role == MarkerRole.CalibrationTo), how.ClickSdPixels),
            PictureHeightPixels = PinholeCamera.HeightPixels,
            Travel = left ? Travel.Left : Travel.Right,
            CameraDistance = Length.FromMetres(clip.Camera.DistanceMetres),
            Nearer = Length.FromMetres(how.OffsetTold ? how.NearerMetres : 0),
            PointSdPixels = how.ClickSdPixels,
        };
        var trial = new ContactTrial
        {
            AthleteId = "made-up",
            Date = new(2026, 3, 2),
            Attempt = number + 1,
            Clip = $"clip {number + 1}",
            Clock = clock,
            Readings = [.. Enumerable.Range(1, 2).Select(n => Reading(n, reader.Read(clip, random)))],
            Shutter = how.ReadOutSeconds > 0 ? new RollingShutter(Duration.FromSeconds(how.ReadOutSeconds), PinholeCamera.HeightPixels) : null,
            Travel = geometry.Travel,
            Digitised = geometry.ToMetres(clock, tracks),
        };
        return new(trial, run, Mass.FromKilograms(run.MassKilograms + (BodyMassError.Usual.Kilograms * random.Normal())));

        ContactReading Reading(int n, (int First, int Contact) frames) => how.ReadOutSeconds > 0
            ? new(n, new(frames.First, clip.RowOf(0)), new(frames.Contact, clip.RowOf(run.ContactSeconds)))
            : new(n, new(frames.First), new(frames.Contact));
    }
}
