using System.Globalization;
using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;

namespace Analytics.Season.Clips;

/// <summary>Points and direction of a repetition, or what its points say against its row.</summary>
/// <param name="Clip">The points in metres; null when they could not be used.</param>
/// <param name="Travel">Direction of travel, typed or found; null when not known.</param>
/// <param name="RowFault">What holds the row itself back; null when nothing does.</param>
internal sealed record ClipOutcome(DigitisedClip? Clip, Travel? Travel, CellFault? RowFault = null);

/// <summary>Reads the points of one repetition, checks them and brings them to metres.</summary>
internal sealed class ClipReader(SeasonIntake intake, VideoSettings video)
{
    /// <summary>Reads the points. What is wrong is held back with a reason; the times of the row stay, but where the rate is at fault.</summary>
    /// <param name="path">The file.</param>
    /// <param name="trial">The repetition as timed.</param>
    /// <param name="athlete">Whose it is.</param>
    /// <param name="isChecked">Whether the coach stands by it.</param>
    /// <param name="files">Receives the rows that were used.</param>
    public ClipOutcome Read(string path, ContactTrial trial, Athlete athlete, bool isChecked, ClipFiles files)
    {
        if (PointsReader.Read(intake, path) is not { GoodRows: > 0 } points) return new ClipOutcome(null, trial.Travel);
        var map = MarkerMap.Of(points, video);
        if (map.Remark is { } remark) intake.Note(points.Tally.Path, remark);
        var (from, to) = (trial.Readings[0].FirstMovement.Frame, trial.Readings[0].Contact.Frame);
        ClipOutcome? outcome = null;
        if ((map.Fault ?? Read(map, points, trial, athlete, isChecked, from, to, out outcome)) is not { } fault)
        {
            files.Add(points.Tally, points.GoodRows);
            return outcome!;
        }

        points.Tally.HoldBackRows(fault with { Reason = fault.Reason + "; the points were not used, the times of the row stay" }, points.GoodRows, athlete.Id);
        return new ClipOutcome(null, trial.Travel);
    }

    private CellFault? Read(MarkerMap map, ClipPoints points, ContactTrial trial, Athlete athlete, bool isChecked, int from, int to, out ClipOutcome? outcome)
    {
        outcome = null;
        var body = new ClipBody(map);
        if (Frames(body, trial.Clock) is { } frames) return frames;
        if ((isChecked ? null : PostureCheck.Axes(body, video, from, to) ?? PostureCheck.Picture(body, video)) is { } axes) return axes;
        if (PostureCheck.Way(body, trial.Travel, isChecked, from, to, out var way) is not { } travel) return way;
        if (Geometry(map, travel, out var geometry) is { } ends) return ends;
        var clip = Metres(body, geometry!, trial.Clock);
        if (!isChecked)
        {
            if (ScaleCheck.Fault(clip, athlete, video.Calibration!) is { } scale) return scale;
            // The rate decides what counts as a jump, so it is doubted first.
            if (RateFault(body, geometry!, trial.Clock, video.Rate?.Hertz, from, to, out var tooFast) is { } rate) outcome = new ClipOutcome(null, travel, rate);
            if (outcome is not null || tooFast is not null) return tooFast;
            var jumps = JumpCheck.Find(clip);
            if (JumpCheck.Spoilt(jumps, body) is { } spoilt) return spoilt;
            if (LeaveOut(jumps, body, points, athlete)) clip = Metres(body, geometry!, trial.Clock);
        }

        foreach (var remark in ClipRemarks.Of(body, trial.Readings)) intake.Note(points.Tally.Path, remark);
        outcome = new ClipOutcome(clip, travel);
        return null;
    }

    private static CellFault? Frames(ClipBody body, FrameClock clock)
    {
        if (body.IsTooLong)
            return new CellFault(PointsReader.Frame.Name, CellText.Number(body.Last), $"the points span frames {body.First} to {body.Last}; at most {ClipBody.MostFrames} frames are read", "Look for a frame number with a digit too many, or cut the clip.");
        if (clock.Covers(body.First) && clock.Covers(body.Last)) return null;
        return new CellFault(PointsReader.Frame.Name, "", $"the points span frames {body.First} to {body.Last}, but the time stamps cover frames {clock.FirstFrame} to {clock.FirstFrame + clock.FrameCount - 1}", "Count frames alike in both files, or export the time stamp of every frame.");
    }

    private CellFault? Geometry(MarkerMap map, Travel travel, out ClipGeometry? geometry)
    {
        geometry = null;
        var calibration = video.Calibration!;
        MarkerPoints from = map.Roles[MarkerRole.CalibrationFrom], to = map.Roles[MarkerRole.CalibrationTo];
        var other = to.Points.ToDictionary(p => p.Frame);
        var both = from.Points.Where(p => other.ContainsKey(p.Frame)).ToList();
        string names = $"'{CellText.Show(from.Written)}' and '{CellText.Show(to.Written)}'";
        if (both.Count is 0) return new CellFault(from.Head, "", $"the ends of the calibration length, {names}, were never digitised in the same frame", "Digitise both ends in one frame or more.");
        double along = both.Average(p => other[p.Frame].X - p.X), across = both.Average(p => other[p.Frame].Y - p.Y);
        if (double.Hypot(along, across) < 10)
            return new CellFault(from.Head, "", string.Create(CultureInfo.InvariantCulture, $"the ends of the calibration length, {names}, are only {double.Hypot(along, across):0.#} px apart"), "Digitise the two ends of the length at their places, at least 10 px apart.");
        geometry = new ClipGeometry
        {
            Scale = LengthScale.FromLength(calibration.Length, along, across, calibration.EndPointSdPixels / Math.Sqrt(both.Count)),
            YAxis = video.YAxis,
            Travel = travel,
            PictureHeightPixels = video.PictureHeightPixels,
            CameraDistance = video.CameraDistance,
            Nearer = video.LaneOffset,
            PointSdPixels = video.DigitisingSdPixels,
        };
        return null;
    }

    private static DigitisedClip Metres(ClipBody body, ClipGeometry geometry, FrameClock clock) => geometry.ToMetres(clock, body.Markers.Select(m => m.Track), body.First);

    private static CellFault? RateFault(ClipBody body, ClipGeometry geometry, FrameClock clock, double? usual, int from, int to, out CellFault? tooFast)
    {
        tooFast = null;
        if (from < body.First || to > body.Last || body.Way(from, to) is not { } way) return null;
        double metres = Math.Abs(way.X) * geometry.MetresPerPixel().Along, seconds = clock.Between(from, to).Seconds;
        if (clock.FrameCount is null && RateCheck.Points(metres, seconds, clock.Rate.Hertz, usual) is { } rate) return rate;
        if (metres / seconds > GateHead.HighestSpeed)
            tooFast = new CellFault("", "", string.Create(CultureInfo.InvariantCulture, $"'{CellText.Show(body.Carrier!.Points.Written)}' moves {metres:0.0} m in {seconds:0.000} s, {metres / seconds:0.0} m/s; allowed up to {GateHead.HighestSpeed} m/s"), "Check the time stamps or the rate, and the calibration length.");
        return null;
    }

    /// <summary>Takes single points out of line out; whether there were any.</summary>
    private static bool LeaveOut(IReadOnlyList<MarkerJump> jumps, ClipBody body, ClipPoints points, Athlete athlete)
    {
        foreach (var jump in jumps)
        {
            var marker = body.Find(jump.Role)!;
            var (line, x, y) = marker.Clear(jump.Frame);
            points.Tally.HoldBack(line, [JumpCheck.LeftOut(jump, marker.Points, x, y)], athlete.Id, points.IsWide ? 0 : 1);
            if (!points.IsWide) points.GoodRows--;
        }

        return jumps.Count > 0;
    }
}
