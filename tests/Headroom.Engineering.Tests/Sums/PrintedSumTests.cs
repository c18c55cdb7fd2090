using Headroom.Engineering.Sums;

namespace Headroom.Engineering.Tests.Sums;

/// <summary>Every sum against printed rows of the reference values for power and cabling, and for sound, air and heat.</summary>
public sealed class PrintedSumTests
{
    // The rows take copper as 1.7241e-8 Ω·m, rounded from the 1/58 that is used here: 0.0024 % of a resistance, and of what hangs on it alone.
    private const double RoundedCopper = 0.000024;

    public static TheoryData<PrintedSum> Power => new()
    {
        new PrintedSum("power-and-cabling/LC-3", "far-end-volts volts 50 V length 100 m cable 24 AWG draw 25.5 W temperature 60 C", "far-end-volts", 44.4036, 0.0005),
        new PrintedSum("power-and-cabling/LC-3", "far-end-volts volts 50 V length 100 m cable 24 AWG draw 25.5 W temperature 60 C", "port-watts", 28.7139, 0.0005),
        new PrintedSum("power-and-cabling/LC-8", "far-end-volts volts 52 V length 100 m cable 23 AWG draw 71.3 W temperature 60 C pairs 4", "far-end-volts", 46.0122, 0.0005),
        new PrintedSum("power-and-cabling/LC-21", "far-end-volts volts 24 V length 100 m cable 24 AWG draw 15 W temperature 60 C", "far-end-volts", null, 0),
        new PrintedSum("power-and-cabling/LC-21", "far-end-volts volts 24 V length 100 m cable 24 AWG draw 15 W temperature 60 C", "most-watts", 14.777, 0.0005 + 14.777 * RoundedCopper),
        new PrintedSum("power-and-cabling/X-7", "longest-run volts 24 V least-volts 18 V draw 8.5 W cable 24 AWG temperature 20 C", "longest-run", 150.88, 0.005 + 150.88 * RoundedCopper),
        new PrintedSum("power-and-cabling/X-7", "longest-run volts 24 V least-volts 18 V draw 8.5 W cable 24 AWG temperature 20 C", "most-ohms", 12.7059, 0.00005),
        new PrintedSum("power-and-cabling/LC-1", "loop-resistance length 100 m cable 24 AWG temperature 20 C", "power-loop-2", 8.42132, 0.000005 + 8.42132 * RoundedCopper),
        new PrintedSum("power-and-cabling/LC-6", "loop-resistance length 100 m cable 24 AWG temperature 20 C", "power-loop-4", 4.21066, 0.000005 + 4.21066 * RoundedCopper),
        // K-7 prints 133.7 Ω/km for one conductor of 24 AWG at 63 % of copper.
        new PrintedSum("power-and-cabling/K-7", "loop-resistance length 1000 m cable 24 AWG temperature 20 C conductivity 63 %", "conductor", 133.7, 0.05),
        new PrintedSum("power-and-cabling/BU-1", "power-budget budget 250 W devices 24 x 5.5 W by measured", "left", 118.0, 0.05),
        new PrintedSum("power-and-cabling/BU-5", "power-budget budget 370 W devices 24 x 13 W by class", "left", 0.4, 0.05),
        new PrintedSum("power-and-cabling/BU-8", "power-budget budget 195 W devices 3 x 51 W by class type 3", "left", 15, 0.5),
        new PrintedSum("power-and-cabling/R-3", "power-budget budget 100 W devices 15 W by negotiated", "by-negotiated", 16.334, 0.0005),
        new PrintedSum("power-and-cabling/BU-3", "cold-start budget 250 W devices 24 x 25.5 W", "up-at-once", 8, 0.5),
        new PrintedSum("power-and-cabling/BU-3", "cold-start budget 250 W devices 24 x 25.5 W", "dark", 16, 0.5),
        new PrintedSum("power-and-cabling/C-6", "class-of-draw draw 51 W", "class", 6, 0.5),
        new PrintedSum("power-and-cabling/C-6", "class-of-draw draw 51 W", "source-watts", 60, 0.5),
        new PrintedSum("power-and-cabling/LC-14", "injector-watts draw 8.5 W volts 24 V length 50 m cable 24 AWG temperature 20 C", "port-watts", 9.1062, 0.0005),
        new PrintedSum("power-and-cabling/LC-22", "injector-watts draw 12 W volts 24 V length 100 m cable 26 AWG temperature 20 C", "port-watts", null, 0),
        new PrintedSum("power-and-cabling/HT-3", "supply-draw own 35 W ports 132 W efficiency 90 %", "mains-watts", 185.556, 0.0005),
        new PrintedSum("power-and-cabling/HT-3", "supply-draw own 35 W ports 132 W efficiency 90 %", "heat-btu", 182.74, 0.005),
        new PrintedSum("power-and-cabling/HT-6", "supply-draw own 35 W ports 132 W efficiency 90 % path-efficiency 97 %", "mains-watts", 190.092, 0.0005),
        new PrintedSum("power-and-cabling/PW-2", "inrush capacitance 180 uF", "time", 25.65, 0.005),
        new PrintedSum("power-and-cabling/PW-4", "inrush capacitance 180 uF volts 57 V", "most-capacitance", 350.9, 0.05),
    };

    public static TheoryData<PrintedSum> Cabling => new()
    {
        new PrintedSum("power-and-cabling/T-45", "link-length temperature 45 C", "longest", 81.08, 0.005),
        new PrintedSum("power-and-cabling/T-55 screened", "link-length temperature 55 C screen yes", "longest", 84.11, 0.005),
        new PrintedSum("power-and-cabling/CO-7", "cord-length link 90 m cord 28 AWG", "longest-cords", 6.154, 0.0005),
        new PrintedSum("power-and-cabling/CO-2", "cord-length link 85 m cord 24 AWG", "longest-cords", 14.167, 0.0005),
        new PrintedSum("power-and-cabling/H-2", "bundle-rise cables 100 current 300 mA cable 24 AWG temperature 20 C", "rise", 12.19, 0.005),
        new PrintedSum("power-and-cabling/H-3", "bundle-rise cables 24 current 300 mA cable 24 AWG conductors 4 temperature 45 C", "rise", 2.40, 0.005),
        new PrintedSum("power-and-cabling/FL-1", "conduit-fill inside 26.6 mm cables 7 x 6.1 mm", "fill", 36.81, 0.005),
        new PrintedSum("power-and-cabling/FL-3", "conduit-fill inside 20.9 mm cables 2 x 7.5 mm", "limit", 31, 0.5),
        new PrintedSum("power-and-cabling/FL-8, most 29", "conduit-fill inside 52.5 mm cables 20 x 6.1 mm", "more", 9, 0.5),
        new PrintedSum("power-and-cabling/SP-2", "mains-separation circuits 20 cable screened between basket", "least-distance", 76, 0.5),
        new PrintedSum("power-and-cabling/SP-5", "mains-separation circuits 40 between solid", "least-distance", 0, 0.5),
        new PrintedSum("power-and-cabling/FW-1", "fibre-loss length 150 m fibre OM3 light 850", "loss", 1.950, 0.0005),
        new PrintedSum("power-and-cabling/FW-3", "fibre-reach port 10GBASE-SR fibre OM4 length 300 m splices 2", "loss-left", -0.100, 0.0005),
        new PrintedSum("power-and-cabling/FW-6", "fibre-reach port 1000BASE-LX fibre OS2 length 2000 m splices 4", "loss-left", 1.070, 0.0005),
        // By hand, no printed row: 305 m of box hold four runs of 66 m, so that 17 such runs take five.
        new PrintedSum("by hand", "boxes-of-cable runs 17 x 60 m", "boxes", 5, 0.5),
    };

    public static TheoryData<PrintedSum> Sound => new()
    {
        new PrintedSum("sound-air-heat/BR-1, L_dir", "level-at-distance power 54.5 dB distance 0.6 m", "level", 50.96, 0.005),
        new PrintedSum("sound-air-heat/FF-4 at 2 m", "level-at-distance power 60 dB distance 2 m on corner", "level", 60 - 7.98, 0.005),
        // Printed from an absorption of 15.98 m² rounded: half a hundredth of a decibel more.
        new PrintedSum("sound-air-heat/RE-1 at 1 m", "room-level power 60 dB distance 1 m length 4 m width 3 m height 2.5 m absorption 15.98 m2", "level", 60 - 4.66, 0.01),
        new PrintedSum("sound-air-heat/RM-1c", "room-level power 60 dB distance 1 m length 4 m width 3 m height 2.5 m absorption 15.98 m2", "critical-distance", 0.934, 0.0005),
        new PrintedSum("sound-air-heat/WC-1", "next-room level 56.99 dB wall 38 dB wall-area 8.2 m2 door 27 dB door-area 1.791 m2 gap 90 cm2 absorption 15.98 m2", "level-there", 26.38, 0.01),
        new PrintedSum("sound-air-heat/WL-2", "next-room level 57 dB wall 38 dB wall-area 8.2 m2 door 27 dB door-area 1.791 m2 gap 90 cm2 absorption 16 m2", "reduction", 28.58, 0.005),
        new PrintedSum("sound-air-heat/BD-1 at 1 kHz, IS", "barrier to-edge 0.58310 m from-edge 0.58310 m straight 1.13137 m", "loss", 7.02, 0.005),
        new PrintedSum("sound-air-heat/BD-1 at 1 kHz, KA", "barrier to-edge 0.58310 m from-edge 0.58310 m straight 1.13137 m", "loss-kurze-anderson", 7.88, 0.005),
        new PrintedSum("sound-air-heat/LS-6", "sum-of-sources levels 30, 35, 40, 45 dB", "together", 46.61, 0.005),
        new PrintedSum("sound-air-heat/LS-4", "sum-of-sources levels 4 x 45 dB", "together", 51.02, 0.005),
        new PrintedSum("sound-air-heat/BG-1", "background-correction reading 51 dBA background 42 dBA", "source", 50.42, 0.005),
        new PrintedSum("sound-air-heat/BG-6", "background-correction reading 46 dBA background 44 dBA", "at-most", 43.0, 0.05),
        new PrintedSum("sound-air-heat/BG-6", "background-correction reading 46 dBA background 44 dBA", "source", null, 0),
        new PrintedSum("sound-air-heat/BG-8", "background-correction reading 42 dBA background 43 dBA", "source", null, 0),
        new PrintedSum("sound-air-heat/AF-2, 50 lg", "fan-speed from 8000 rpm to 4000 rpm", "level-change", -15.05, 0.005),
        new PrintedSum("sound-air-heat/AF-8, 60 lg", "fan-speed from 4000 rpm to 5000 rpm", "level-change", 5.81, 0.005),
        new PrintedSum("sound-air-heat/AF-2, P", "fan-speed from 8000 rpm to 4000 rpm", "power-share", 12.5, 0.05),
        new PrintedSum("sound-air-heat/SP-2, LA", "spectrum-level bands 38, 40, 43, 46, 47, 46, 43, 37 dB", "a-level", 51.87, 0.005),
        new PrintedSum("sound-air-heat/SP-2, LZ", "spectrum-level bands 38, 40, 43, 46, 47, 46, 43, 37 dB", "z-level", 52.81, 0.005),
        new PrintedSum("sound-air-heat/SP-2, NR", "noise-rating bands 38, 40, 43, 46, 47, 46, 43, 37 dB", "nr", 48.77, 0.005),
        new PrintedSum("sound-air-heat/SP-2, NC", "noise-rating bands 38, 40, 43, 46, 47, 46, 43, 37 dB", "nc", 47.0, 0.05),
        new PrintedSum("sound-air-heat/PW-2", "reading-and-prediction predicted 46 dBA predicted-u 3 dB reading 51 dBA reading-u 1.6 dB", "combined", 49.89, 0.005),
        new PrintedSum("sound-air-heat/PW-6", "reading-and-prediction predicted 40 dBA predicted-u 1.5 dB reading 48 dBA reading-u 1.6 dB", "combined", null, 0),
        new PrintedSum("sound-air-heat/PW-5", "reading-and-prediction predicted 41 dBA predicted-u 1.5 dB reading 47 dBA reading-u 1.6 dB", "apart", 2.74, 0.005),
    };

    public static TheoryData<PrintedSum> Heat => new()
    {
        new PrintedSum("sound-air-heat/CB-5 at 40 W", "cupboard-rise heat 40 W faces 1.66 m2", "rise", 9.4, 0.05),
        new PrintedSum("sound-air-heat/ST-1", "cupboard-rise heat 100 W faces 0 m2 vent 100 cm2", "rise", 21.75, 0.005),
        new PrintedSum("sound-air-heat/SN-1", "vents-needed heat 100 W rise 10 K apart 0.6 m", "each-vent", 314.9, 0.05),
        new PrintedSum("sound-air-heat/SN-1, gross", "vents-needed heat 100 W rise 10 K apart 0.6 m", "each-hole", 787, 0.5),
        new PrintedSum("sound-air-heat/XF-1", "air-needed heat 100 W rise 10 K around 20 C", "flow", 29.7, 0.05),
        new PrintedSum("sound-air-heat/TR-2", "outlet-rise heat 40 W flow 2.2 l/s", "rise", 15.01, 0.005),
        new PrintedSum("sound-air-heat/RC-10", "outlet-rise heat 40 W flow 2.2 l/s back 30 % around 25 C", "inlet", 31.4, 0.05),
        // OP-4 and OP-10: both fans on the same path, told in m3/h.
        new PrintedSum("sound-air-heat/OP-10", "fan-swap own-flows 0, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 3.8 l/s own-pressures 62, 52, 42, 35, 31, 26, 18, 8, 0 Pa moves 2.199 l/s new-flows 0, 1, 2, 3, 4, 5, 6, 7, 8, 8.5 l/s new-pressures 300, 262, 222, 190, 172, 150, 118, 76, 28, 0 Pa", "new-flow", 5.000 * 3.6, 0.005),
        new PrintedSum("sound-air-heat/GC-1", "grille-opened flows 0, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 3.8 l/s pressures 62, 52, 42, 35, 31, 26, 18, 8, 0 Pa moves 2.085 l/s free 60 %", "level-change", -1.15, 0.005),
        new PrintedSum("sound-air-heat/GC-1", "grille-opened flows 0, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 3.8 l/s pressures 62, 52, 42, 35, 31, 26, 18, 8, 0 Pa moves 2.085 l/s free 60 %", "flow-gain", 5.4, 0.05),
        new PrintedSum("sound-air-heat/VR-1", "fan-on-volts rated 12 V volts 7 V drop 1 V", "level-change", -13.16, 0.005),
        new PrintedSum("sound-air-heat/VR-6", "fan-on-volts rated 5 V volts 12 V", "speed", 240, 0.5),
        new PrintedSum("sound-air-heat/GG-6", "outlet-gap gap 5 mm", "ring-share", 53, 0.5),
        new PrintedSum("sound-air-heat/DE-2 at 2000 m", "inlet-limit rated 35 C altitude 2000 m", "limit", 31.33, 0.005),
        new PrintedSum("sound-air-heat/FL-1", "fanless-case heat 12 W width 200 mm depth 130 mm height 30 mm", "rise", 29.1, 0.05),
        new PrintedSum("sound-air-heat/FL-2", "fanless-case heat 12 W width 200 mm depth 130 mm height 30 mm top covered", "rise", 67.3, 0.05),
        new PrintedSum("sound-air-heat/FN-4 at 60 °C", "fan-life to 60 C", "shortest", 15000, 0.5),
        new PrintedSum("sound-air-heat/FN-4 at 60 °C", "fan-life to 60 C", "longest", 26667, 0.5),
    };

    // The block of the reference, down to 1.75 V a cell.
    private const string Block = "row-watts 270.6 W, 177 W, 139.8 W, 85.2 W, 49.38 W, 29.1 W, 21.3 W, 14.34 W, 9.696 W, 8.004 W, 4.314 W row-times 5 min, 10 min, 15 min, 30 min, 60 min, 120 min, 180 min, 300 min, 480 min, 600 min, 1200 min";

    public static TheoryData<PrintedSum> Standby => new()
    {
        new PrintedSum("runtime/1.3/w100", $"battery-minutes load 100 W {Block}", "minutes", 23.975, 0.005),
        new PrintedSum("runtime/1.3/closet", $"battery-minutes load 95 W efficiency 88 % blocks 2 ageing 1.25 temperature 10 °C {Block}", "minutes", 32.350, 0.0005),
        new PrintedSum("runtime/1.3/closet", $"battery-minutes load 95 W efficiency 88 % blocks 2 {Block}", "battery-watts", 107.955, 0.0005),
        new PrintedSum("runtime/1.3/outside", $"battery-minutes load 300 W {Block}", "minutes", null, 0),
        new PrintedSum("runtime/1.6/2", $"staged-minutes loads 60 W, 30 W from 0 min, 10 min {Block}", "by-share-used", 100.688, 0.005),
        new PrintedSum("runtime/1.6/4", $"staged-minutes loads 30 W, 60 W from 0 min, 30 min {Block}", "minutes", 62.395, 0.005),
        new PrintedSum("runtime/1.2/va", "standby-load load 450 W power-factor 95 %", "volt-amperes", 473.684, 0.0005),
        new PrintedSum("runtime/1.2/hidden", "standby-load load 100 W power-factor 60 % real 900 W apparent 1000 VA", "most-watts", 600, 1e-9),
        // By hand, no printed row: (500 W · 0.9 − 20 W) · 0.97.
        new PrintedSum("by hand", "standby-port-cap real 500 W apparent 900 VA own 20 W efficiency 90 % path-efficiency 97 %", "ports", 417.1, 0.05),
        new PrintedSum("runtime/1.4/h", "battery-by-current capacity 100 Ah current 10 A", "hours", 8.70551, 0.000005),
        new PrintedSum("runtime/1.5/lithium", "lithium-minutes volts 12.8 V capacity 7 Ah load 60 W", "minutes", 80.64, 0.005),
        new PrintedSum("runtime/1.2/between", "battery-temperature temperature 5 °C", "factor", 1.290, 0.001),
        new PrintedSum("runtime/1.2/life", "battery-temperature temperature 30 °C", "life", 66.0, 0.05),
        new PrintedSum("runtime/1.5/recharge", "recharge-time removed 4.42 Ah current 0.75 A", "hours", 6.777, 0.0005),
        new PrintedSum("runtime/1.5/generator", "generator-time tank 12 L burns 0.45 L/kWh load 1000 W", "hours", 26.67, 0.005),
    };

    public static TheoryData<PrintedSum> Traffic => new()
    {
        new PrintedSum("runtime/3.3/20-phones", "calls-at-once phones 20 busy 12 % lost 1 %", "calls", 7, 0.5),
        new PrintedSum("runtime/3.3/20-phones, call congestion of 7", "calls-at-once phones 20 busy 12 % lost 1 %", "lost-then", 0.38976, 0.000005),
        new PrintedSum("runtime/3.3/20-phones, Erlang B of 7", "calls-at-once phones 20 busy 12 % lost 1 %", "lost-by-erlang", 0.82831, 0.000005),
        new PrintedSum("runtime/3.2/codec-64", "voice-rate codec 64 kb/s tagged no", "on-wire", 95.2, 0.05),
        new PrintedSum("runtime/3.2/codec-8, tagged", "voice-rate codec 8 kb/s", "frame-rate", 32.8, 0.05),
        new PrintedSum("runtime/3.5/quantiles", "busy-users users 48 active 10 %", "at-once", 12, 0.5),
        new PrintedSum("runtime/3.4/days", "recorder-days cameras 16 rate 4 Mb/s size 8 TB", "days", 10.4167, 0.00005),
        new PrintedSum("runtime/3.4/days, 40 %", "recorder-days cameras 16 rate 4 Mb/s size 8 TB written 40 %", "days", 26.0417, 0.00005),
        new PrintedSum("runtime/3.5/wait", "line-wait load 80 % rate 1 Gb/s", "stay", 61.52, 0.005),
        new PrintedSum("runtime/3.5/queues, p99", "line-wait load 95 % rate 1 Gb/s", "frame-times", 20, 0.5),
        new PrintedSum("runtime/3.5/oversubscription", "oversubscription ports 48 x 1 Gb/s uplinks 2 x 10 Gb/s", "ratio", 2.4, 0.05),
        new PrintedSum("power-and-cabling/S-5", "oversubscription ports 48 x 1 Gb/s uplinks 4 x 10 Gb/s", "capacity", 176, 0.5),
        new PrintedSum("runtime/3.6/classes", "marking class telephony", "dscp", 46, 0.5),
        new PrintedSum("runtime/3.6/wifi", "marking class telephony", "wifi", 6, 0.5),
    };

    public static TheoryData<PrintedSum> Failures => new()
    {
        new PrintedSum("runtime/2.1/three-failures", "failure-rate service 2102400 h failures 3 mtbf 600000 h", "rate", 1.458541, 0.0000005),
        new PrintedSum("runtime/2.1/800-hours, low", "failure-rate service 800 h failures 2", "mtbf-low", 127.069, 0.0005),
        new PrintedSum("runtime/2.1/800-hours, high", "failure-rate service 800 h failures 2", "mtbf-high", 2251.229, 0.0005),
        new PrintedSum("runtime/2.2/7-and-2", "compare-failures failures 7 service 400000 h other-failures 2 other-service 500000 h", "chance", 8.76889, 0.000005),
        new PrintedSum("runtime/2.2/7-and-2, fails more", "compare-failures failures 7 service 400000 h other-failures 2 other-service 500000 h", "fails-more", 97.8905, 0.00005),
        new PrintedSum("runtime/2.3/45-drives", "spares units 45 mtbf 100000 h lead 90 d", "spares", 3, 0.5),
        new PrintedSum("runtime/2.3/predictive", "spares units 120 mtbf 600600 h lead 365 d seen 4", "spares", 5, 0.5),
        new PrintedSum("runtime/2.4/switch-and-supply", "availability parts 200000 h, 100000 h", "lost", 3.15272, 0.000005),
        new PrintedSum("runtime/2.4/50-kh", "availability parts 50000 h", "works", 99.9520230, 0.00000005),
        new PrintedSum("runtime/2.5/shape-0.5, 72 h", "burn-in shape 0.5 scale 1000000 h", "first-year", 8.19408, 0.000005),
        new PrintedSum("runtime/2.5/shape-0.7, caught", "burn-in shape 0.7 scale 2000000 h", "caught", 0.07749, 0.000005),
    };

    public static TheoryData<PrintedSum> Measured => new()
    {
        new PrintedSum("runtime/5.2/12", "draw-from-sites site-means 5.1666666667 W readings-each 3 unit-spread 0.2 W units 24 expected 6.3 W expected-spread 1.5 W site-spread 0.5 W", "together", 177.5163, 0.001),
        new PrintedSum("runtime/5.4/idle", "draw-in-states units 24 idle 3 W busy 8 W busy-share 30 % kept 99 %", "together", 137, 0.05),
        new PrintedSum("runtime/5.4/idle", "draw-in-states units 24 idle 3 W busy 8 W busy-share 30 % kept 99.99 %", "together", 152, 0.05),
    };

    public static TheoryData<PrintedSum> Office => new()
    {
        new PrintedSum("power-and-cabling/RK-5", "rack-room things 1 U height 12 U", "mounting-height", 533.4, 0.05),
        // By hand: 482.6 mm, four units of 44.45 mm and twice 100 mm.
        new PrintedSum("by hand", "rack-cord apart 4 U", "length", 0.8604, 0.00005),
        // By hand: 480 W / 230 V / 0.9.
        new PrintedSum("by hand", "strip-current loads 2 x 210 W, 60 W volts 230 V", "current", 2.3188, 0.00005),
        new PrintedSum("runtime/4.1/26", "subnet-for devices 61 growth 0 %", "prefix", 26, 0.5),
        new PrintedSum("runtime/4.1/26", "subnet-for devices 61 growth 0 %", "hosts", 62, 0.5),
        new PrintedSum("runtime/4.3/lease-3", "addresses-to-lend an-hour 60 stay 0.9 h lease 2 h", "pool", 155, 0.5),
        new PrintedSum("runtime/4.3/lease-2", "addresses-to-lend an-hour 20 stay 1.5 h lease 1 h", "mean", 50, 0.5),
        new PrintedSum("runtime/7/price-30", "price-at-margin cost 100 margin 30 %", "price", 142.86, 0.005),
        new PrintedSum("runtime/7/margin-40", "margin-of-mark-up mark-up 40 %", "margin", 28.5714, 0.00005),
        new PrintedSum("runtime/7/energy", "year-of-energy draw 60 W price 0.25 efficiency 85 %", "energy", 618.353, 0.0005),
        new PrintedSum("runtime/7/owning", "cost-of-owning first 2500 yearly 360.24 interest 6 % years 5", "today", 4017.462, 0.0005),
    };

    [Theory, MemberData(nameof(Measured)), MemberData(nameof(Heat)), MemberData(nameof(Office)), MemberData(nameof(Standby)), MemberData(nameof(Traffic)), MemberData(nameof(Failures)), MemberData(nameof(Power)), MemberData(nameof(Cabling)), MemberData(nameof(Sound))]
    public void A_sum_comes_to_what_is_printed(PrintedSum row)
    {
        var figure = Reckoned.Of(row.Typed).Figures.Single(figure => figure.Output.Name == row.Output);
        if (row.Printed is { } printed)
            Assert.Equal(printed, figure.Value!.Value, row.Tolerance);
        else
            Assert.Null(figure.Value);
    }

    [Fact]
    public void Every_sum_is_held_against_a_row() => Assert.Equal(
        AllSums.All.Select(sum => sum.Name).Order(),
        Power.Concat(Cabling).Concat(Heat).Concat(Sound).Concat(Standby).Concat(Traffic).Concat(Failures).Concat(Office).Concat(Measured).Select(row => row.Data.Typed.Split(' ')[0]).Distinct().Order());
}
