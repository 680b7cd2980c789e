using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Body;

public class CentreOfMassTests
{
    private static readonly Dictionary<string, MarkerRole> Names = new()
    {
        ["VERT"] = MarkerRole.HeadVertex, ["CERV"] = MarkerRole.Neck,
        ["SJCR"] = MarkerRole.Shoulder, ["EJCR"] = MarkerRole.Elbow, ["WJCR"] = MarkerRole.Wrist, ["MET3R"] = MarkerRole.Knuckle,
        ["HJCR"] = MarkerRole.Hip, ["KJCR"] = MarkerRole.Knee, ["AJCR"] = MarkerRole.Ankle, ["HEELR"] = MarkerRole.Heel, ["TTIPR"] = MarkerRole.Toe,
        ["SJCL"] = MarkerRole.FarShoulder, ["EJCL"] = MarkerRole.FarElbow, ["WJCL"] = MarkerRole.FarWrist, ["MET3L"] = MarkerRole.FarKnuckle,
        ["HJCL"] = MarkerRole.FarHip, ["KJCL"] = MarkerRole.FarKnee, ["AJCL"] = MarkerRole.FarAnkle, ["HEELL"] = MarkerRole.FarHeel, ["TTIPL"] = MarkerRole.FarToe,
    };

    // MIDS and MIDH are the middles of the two sides, which the library makes itself.
    private static readonly Dictionary<MarkerRole, PlanePoint> Posture = OracleTable.Read("motion/posture.csv")
        .Where(r => Names.ContainsKey(r.Text("landmark"))).ToDictionary(r => Names[r.Text("landmark")], r => new PlanePoint(r["x_m"], r["y_m"]));

    [Fact]
    public void OfBody_Posture_IsTheOracle()
    {
        var male = CentreOfMass.OfBody(SegmentTable.DeLevaMale, Posture.Keys);
        Assert.Equal(1, male.MassShare, 1e-12);
        Assert.Empty(male.Missing);
        Assert.Empty(male.StandIns);
        Assert.Equal(0.223211928000, male.Of(Posture).Point.XMetres, 1e-9);
        Assert.Equal(1.07119992590, male.Of(Posture).Point.YMetres, 1e-9);
        var female = CentreOfMass.OfBody(SegmentTable.DeLevaFemale, Posture.Keys);
        Assert.Equal(0.224059174117, female.Of(Posture).Point.XMetres, 1e-9);
        Assert.Equal(1.07493037684, female.Of(Posture).Point.YMetres, 1e-9);
        Assert.Equal(1, female.MassShare, 1e-12);
        Assert.Equal(1, female.Weights.Values.Sum(), 1e-12);
    }

    [Fact]
    public void OfSegments_WalkingLeg_IsTheOracle()
    {
        var table = SegmentTable.Dempster;
        SegmentMass foot = table["Foot"].Between(MarkerRole.Ankle, MarkerRole.Metatarsal), leg = table["Leg"].Between(MarkerRole.Knee, MarkerRole.Ankle), thigh = table["Thigh"].Between(MarkerRole.Hip, MarkerRole.Knee);
        var limb = CentreOfMass.OfSegments(table, foot, leg, thigh);
        Assert.Equal(0.161, limb.MassShare, 1e-12);
        foreach (var row in OracleTable.Read("motion/limb_centres.csv"))
        {
            var i = Walking.Clip.IndexOf((int)row["frame"]);
            var points = Walking.Clip.Tracks.ToDictionary(t => t.Role, t => t[i]!.Value);
            foreach (var (name, centre) in new[] { ("foot", CentreOfMass.OfSegments(table, foot)), ("leg", CentreOfMass.OfSegments(table, leg)), ("thigh", CentreOfMass.OfSegments(table, thigh)), ("limb", limb) })
            {
                var at = centre.Of(points).Point;
                // Five to eight decimals of a centimetre given.
                Assert.Equal(row[$"{name}_x_cm"], 100 * at.XMetres, name == "limb" ? 1e-8 : 5.1e-6);
                Assert.Equal(row[$"{name}_y_cm"], 100 * at.YMetres, name == "limb" ? 1e-8 : 5.1e-6);
            }
        }
    }

    [Fact]
    public void OfBody_WalkWithDempster_SaysWhatIsMissing()
    {
        var centre = CentreOfMass.OfBody(SegmentTable.Dempster, Walking.Clip);
        Assert.Equal(0.161, centre.MassShare, 1e-12);
        Assert.Equal(["near thigh", "near leg", "near foot"], centre.Segments.Select(s => s.Name));
        Assert.Contains("trunk, head and neck", centre.Missing);
        Assert.Contains("16.1 % of body mass; missing: ", centre.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void OfBody_FewLandmarks_TakesJoinedSegments()
    {
        MarkerRole[] roles = [MarkerRole.Shoulder, MarkerRole.Hip, MarkerRole.Knee, MarkerRole.Ankle, MarkerRole.FarKnee, MarkerRole.FarAnkle];
        var centre = CentreOfMass.OfBody(SegmentTable.Dempster, roles);
        Assert.Equal(["head, arms and trunk", "near thigh", "near foot leg", "far foot leg"], centre.Segments.Select(s => s.Name));
        Assert.Equal(0.678 + 0.161 + 0.061, centre.MassShare, 1e-12);
        Assert.Equal(["far thigh"], centre.Missing);
        Assert.Contains("hip and shoulder alone stands in", centre.StandIns.Single(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ShiftScaleMirror_MoveTheCentreAlong()
    {
        var centre = CentreOfMass.OfBody(SegmentTable.DeLevaMale, Posture.Keys);
        var plain = centre.Of(Posture).Point;
        var moved = centre.Of(Posture.ToDictionary(p => p.Key, p => new PlanePoint(3 - (2 * p.Value.XMetres), 1 + (2 * p.Value.YMetres)))).Point;
        Assert.Equal(3 - (2 * plain.XMetres), moved.XMetres, 1e-12);
        Assert.Equal(1 + (2 * plain.YMetres), moved.YMetres, 1e-12);
    }

    [Fact]
    public void StandardError_Simulated_Agrees()
    {
        var centre = CentreOfMass.OfBody(SegmentTable.DeLevaMale, Posture.Keys);
        var (random, draws) = (new Random(4), 20_000);
        double sum = 0, squares = 0;
        for (var i = 0; i < draws; i++)
        {
            var x = centre.Of(Posture.ToDictionary(p => p.Key, p => new PlanePoint(p.Value.XMetres + (0.01 * Noise.Normal(random)), p.Value.YMetres))).Point.XMetres;
            (sum, squares) = (sum + x, squares + (x * x));
        }
        var stated = centre.Of(Posture, Length.FromCentimetres(1)).StandardError!.Value.Metres;
        // 4 standard errors of an SD: 4/√40000.
        Assert.Equal(1, Math.Sqrt((squares / draws) - (sum / draws * (sum / draws))) / stated, 0.02);
    }

    [Fact]
    public void Series_Walk_HasVelocityErrorsAndBlanks()
    {
        var raw = new DigitisedClip(Walking.Clip.Clock, Walking.Clip.Tracks, 1, Length.FromMillimetres(2), 0.01);
        var centre = CentreOfMass.OfSegments(SegmentTable.Dempster, SegmentTable.Dempster["Thigh"].Between(MarkerRole.Hip, MarkerRole.Knee));
        var (rough, smooth) = (CentreOfMassSeries.Of(centre, raw), CentreOfMassSeries.Of(centre, ClipSmoother.Smooth(raw, new(Frequency.FromHertz(6))).Clip));
        Assert.Null(rough.VelocityX[0]);
        Assert.Null(rough.VelocityAt(106));
        var weights = Math.Sqrt((0.567 * 0.567) + (0.433 * 0.433));
        Assert.Equal(0.002 * weights, rough.StandardError!.Value.Metres, 1e-12);
        Assert.Equal(0.002 * weights * 69.9 / Math.Sqrt(2), rough.VelocityStandardError!.Value.MetresPerSecond, 1e-12);
        Assert.True(smooth.VelocityStandardError!.Value.MetresPerSecond < 0.3 * rough.VelocityStandardError.Value.MetresPerSecond);
        var at = smooth.VelocityAt(50)!;
        Assert.Equal(double.Hypot(smooth.VelocityStandardError.Value.MetresPerSecond, 0.01 * at.Forward.MetresPerSecond), at.ForwardStandardError!.Value.MetresPerSecond, 1e-12);
        Assert.Equal(79.0, 100 * rough.XMetres[14]!.Value, 0.05);
    }

    [Fact]
    public void Bad_Input_IsRefusedInWords()
    {
        Assert.Contains("No segment of Dempster", Assert.Throws<ArgumentException>(() => CentreOfMass.OfBody(SegmentTable.Dempster, [MarkerRole.Hip])).Message, StringComparison.Ordinal);
        var centre = CentreOfMass.OfBody(SegmentTable.DeLevaMale, Posture.Keys);
        Assert.Contains("The posture has no", Assert.Throws<ArgumentException>(() => centre.Of(new Dictionary<MarkerRole, PlanePoint>())).Message, StringComparison.Ordinal);
        var bad = new Dictionary<MarkerRole, PlanePoint>(Posture) { [MarkerRole.Hip] = new(double.NaN, 0) };
        Assert.Contains("the hip is (NaN, 0)", Assert.Throws<ArgumentException>(() => centre.Of(bad)).Message, StringComparison.Ordinal);
        Assert.Contains("at least one segment", Assert.Throws<ArgumentException>(() => CentreOfMass.OfSegments(SegmentTable.Dempster)).Message, StringComparison.Ordinal);
    }
}
