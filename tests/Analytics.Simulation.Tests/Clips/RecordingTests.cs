using Analytics.Metrics.Motion;
using Analytics.Quantities;
using Analytics.Simulation.Clips;
using Analytics.Simulation.Clips.Camera;
using Analytics.Simulation.Clips.Motion;
using Analytics.Simulation.Clips.Reading;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Tests.Clips;

public class RecordingTests
{
    private static RandomNumbers Random(int n = 0) => RandomNumbers.For(11, "recording", n);

    private static Recording Clip(PinholeCamera camera, double rate = 240) => new(RunDraw.Anybody(Random()), camera, FrameTimes.Draw(rate, -0.2, 0.7, Random(1)));

    /// <summary>Without any error the library's geometry gives the true place back, up to where the picture's corner is.</summary>
    [Theory]
    [InlineData(0, false)]
    [InlineData(0.8, false)]
    [InlineData(-0.5, true)]
    public void Draw_BackToMetres_IsTheTrueMotion(double nearer, bool toTheLeft)
    {
        var camera = new PinholeCamera { NearerMetres = nearer, ToTheLeft = toTheLeft };
        var clip = Clip(camera);
        MarkerRole[] roles = [MarkerRole.Hip, MarkerRole.Toe];
        var tracks = clip.Picture(roles).Select(p => new PixelTrack(p.Key.ToString(), p.Key, [.. p.Value.Select(v => v.X)], [.. p.Value.Select(v => v.Y)])).ToList();
        var ((lowX, lowY), (highX, highY)) = (clip.Stick(MarkerRole.CalibrationFrom), clip.Stick(MarkerRole.CalibrationTo));
        var geometry = new ClipGeometry
        {
            Scale = LengthScale.FromLength(Length.FromMetres(Recording.StickMetres), highX - lowX, highY - lowY, 0),
            PictureHeightPixels = PinholeCamera.HeightPixels,
            Travel = toTheLeft ? Travel.Left : Travel.Right,
            CameraDistance = Length.FromMetres(camera.DistanceMetres),
            Nearer = Length.FromMetres(nearer),
        };
        var metres = geometry.ToMetres(FrameClock.FromTimeStamps(clip.Stamps), tracks);
        foreach (var role in roles)
            for (var i = 1; i < clip.FrameSeconds.Length; i++)
            {
                var (was, now) = (clip.Run.Landmarks(clip.FrameSeconds[0])[role], clip.Run.Landmarks(clip.FrameSeconds[i])[role]);
                Assert.Equal(now.X - was.X, metres[role].XMetres[i]!.Value - metres[role].XMetres[0]!.Value, 9);
                Assert.Equal(now.Y - was.Y, metres[role].YMetres[i]!.Value - metres[role].YMetres[0]!.Value, 9);
            }
    }

    /// <summary>A steady point in a rolling shutter is drawn where it is at the moment its row is exposed.</summary>
    [Fact]
    public void Draw_RollingShutter_ShowsTheMomentOfTheRow()
    {
        var camera = new PinholeCamera { ReadOutSeconds = 0.016 };
        static Point Path(double t) => new(6 * t, 0.5);
        var row = camera.Draw(Path(0)).Y;
        var delay = 0.016 * row / 1080;
        Assert.Equal(camera.Draw(Path(0.2 + delay)).X, camera.Draw(Path, 0.2).X, 9);
        // 6 m/s in the time to that row, in pixels.
        Assert.Equal(6 * delay * camera.PixelsPerMetre, camera.Draw(Path, 0.2).X - camera.Draw(Path(0.2)).X, 9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.012)]
    public void FrameOf_IsTheFirstFrameThatSeesTheEvent(double readOut)
    {
        var clip = Clip(new PinholeCamera { ReadOutSeconds = readOut });
        var contact = clip.Run.ContactSeconds;
        var frame = clip.FrameOf(contact)!.Value;
        var delay = clip.Camera.Delay(clip.RowOf(contact));
        Assert.True(clip.FrameSeconds[frame] + delay >= contact);
        Assert.True(clip.FrameSeconds[frame - 1] + delay < contact);
    }

    [Fact]
    public void FrameTimes_DropFrames_KeepTheGridOfTheRate()
    {
        var times = FrameTimes.Draw(120, -0.5, 2, Random(), 0.1);
        var clock = FrameClock.FromTimeStamps([.. times.Select(t => t - times[0])]);
        Assert.True(clock.IsVariable);
        Assert.Equal(1.0 / 120, clock.Interval.Seconds, 9);
        // 300 frames, a tenth of them lost; SD 5.2.
        Assert.InRange(clock.Dropped.Sum(d => d.Count), 30 - 21, 30 + 21);
        Assert.InRange(times[0], -0.5, -0.5 + (1.0 / 120));
    }

    /// <summary>Clicks miss by the stated SD and whole pixels on top: √(s² + 1/12).</summary>
    [Fact]
    public void Read_Clicks_MissByTheStatedSd()
    {
        var clip = Clip(new PinholeCamera());
        var read = new Digitiser(1.5).Read(clip, MarkerNames.Full, Random(2));
        var truth = clip.Picture([.. MarkerNames.Full.Where(r => r.IsBody())]);
        var misses = read.Where(t => t.Role.IsBody()).SelectMany(t => t.XPixels.Zip(truth[t.Role], (x, at) => x!.Value - at.X).Concat(t.YPixels.Zip(truth[t.Role], (y, at) => y!.Value - at.Y))).ToList();
        var sd = Math.Sqrt(misses.Average(m => m * m));
        var expected = Math.Sqrt((1.5 * 1.5) + (1.0 / 12));
        // SE of an SD: s/√(2n).
        Assert.InRange(sd, expected * (1 - (4 / Math.Sqrt(2.0 * misses.Count))), expected * (1 + (4 / Math.Sqrt(2.0 * misses.Count))));
        Assert.All(read.SelectMany(t => t.XPixels).OfType<double>(), x => Assert.Equal(Math.Round(x), x));
    }

    [Fact]
    public void Read_HiddenMarker_LeavesAGapBeforeContactAndNoneAfter()
    {
        var clip = Clip(new PinholeCamera());
        var read = new Digitiser(1, HiddenChance: 1, HiddenFrames: 6).Read(clip, [MarkerRole.Knee], RandomNumbers.For(3, "hidden"));
        var gap = Enumerable.Range(0, read[0].Count).Where(i => read[0].XPixels[i] is null).ToList();
        Assert.Equal(6, gap.Count);
        Assert.Equal(5, gap[^1] - gap[0]);
        Assert.True(clip.FrameSeconds[gap[^1]] < clip.Run.ContactSeconds - 0.1);
    }

    [Fact]
    public void Events_ReadWithoutSlips_AreTheFirstFramesThatShowThem_AndSlipsAreOneFrame()
    {
        var clip = Clip(new PinholeCamera());
        var sharp = new EventReader(0).Read(clip, Random(4));
        Assert.Equal((clip.FrameOf(0)!.Value, clip.FrameOf(clip.Run.ContactSeconds)!.Value), sharp);
        var random = Random(5);
        var off = Enumerable.Range(0, 400).Select(_ => new EventReader(0.2).Read(clip, random).Contact - sharp.Contact).ToList();
        Assert.Equal([-1, 0, 1], off.Distinct().Order());
        // A fifth of 400, SD 8; early and late alike.
        Assert.InRange(off.Count(o => o != 0), 80 - 32, 80 + 32);
        Assert.InRange(off.Count(o => o < 0), 40 - 24, 40 + 24);
    }
}
