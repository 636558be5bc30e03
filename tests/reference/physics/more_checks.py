# Makes more-checks.json: the quantities of checks.json with other numbers in mixed units, worked out by this script alone (numpy, scipy).
# usage: python3 more_checks.py > more-checks.json      (the plates by products of Chebyshev polynomials and Gauss quadrature, not Legendre)
import json, math
import numpy as np
from scipy import linalg, optimize
from numpy.polynomial import chebyshev as C

inch, lb, g0 = 0.0254, 0.45359237, 9.80665
U = {"mm": 1e-3, "m": 1, "cm": 1e-2, "in": inch, "thou": inch / 1000, "ft": 0.3048, "g": 1e-3, "kg": 1, "oz": lb / 16, "lb": lb, "GPa": 1e9, "MPa": 1e6, "Pa": 1, "Mpsi": 1e6 * lb * g0 / inch**2, "psi": lb * g0 / inch**2, "kg/m3": 1, "g/cm3": 1000, "lb/ft3": lb / 0.3048**3, "kg/m2": 1, "g/m2": 1e-3, "oz/ft2": lb / 16 / 0.3048**2, "N": 1, "gf": 1e-3 * g0, "kgf": g0, "lbf": lb * g0, "Hz": 1, "kHz": 1000, "s": 1, "ms": 1e-3, "us": 1e-6, "m/s": 1, "1": 1, "%": 0.01, "%MC": 0.01, "% of green": 0.01, "L": 1e-3, "g/m": 1e-3, "kg/m": 1, "N m": 1, "lbf in": lb * g0 * inch, "m4/(kg s)": 1, "kg/(m2 s)": 1, "m2/s2": 1, "cents": 1, "rad/m": 1, "dB/s": 1}
cases = []
def case(quantity, section, inputs, expected, rel=1e-5):
    n = sum(c["quantity"] == quantity for c in cases) + 1
    out = {}
    for k, v in expected.items():
        value, unit = v[0], v[1]
        e = {"value": value, "unit": unit}
        if isinstance(value, float) or (isinstance(value, int) and not isinstance(value, bool)):
            if len(v) > 2: e["tolerance_absolute"] = v[2]
            else: e["tolerance_relative"] = rel
        out[k] = e
    cases.append({"id": f"more-{quantity}-{n}", "quantity": quantity, "section": section, "inputs": {k: {"value": v[0], "unit": v[1]} for k, v in inputs.items()}, "expected": out, "source": {"kind": "computed", "basis": "derived", "citation": "more_checks.py, numpy and scipy", "note": ""}})
si = lambda q: q[0] * U[q[1]]
def to(x, unit): return (x / U[unit], unit)
def fn(quantity, section, f, rel=1e-5):
    """f takes SI values and gives {field: (SI value, unit)}"""
    def add(**inputs): case(quantity, section, inputs, {k: to(v, u) if not isinstance(v, (str, bool)) else (v, u) for k, (v, u) in f(**{k: si(q) if q[1] in U and not isinstance(q[0], str) else q[0] for k, q in inputs.items()}).items()}, rel)
    return add

conv = lambda a, b: case("unit_conversion", 0, {"x": a}, {"x": (a[0] * U[a[1]] / U[b], b)}, 1e-6)
conv((17.5, "thou"), "mm"); conv((0.62, "g/cm3"), "lb/ft3"); conv((1.9, "Mpsi"), "GPa"); conv((350.0, "gf"), "N"); conv((2.4, "oz/ft2"), "g/m2"); conv((8.2, "lbf in"), "N m"); conv((12.0, "kgf"), "lbf")
for text, value, unit in [("7 3/8 in", 187.325, "mm"), ("11-1/4 in", 285.75, "mm"), ("5/64\"", 1.984375, "mm"), ("2½ in", 63.5, "mm"), ("1' 2 3/4\"", 374.65, "mm"), ("2 lb 5 oz", (2 + 5 / 16) * lb * 1000, "g"), ("2,85 mm", 2.85, "mm"), ("1.45e6 psi", 1.45e6 * U["psi"] / 1e9, "GPa")]:
    case("measurement_text_to_number", 0, {"text": (text, "text")}, {"x": (value, unit)}, 1e-6)

rho = lambda m, L, b, h: {"density": (m / (L * b * h), "kg/m3")}
d = fn("density_rectangular", 1, rho); d(m=(9.75, "oz"), L=(22.5, "in"), b=(8.0, "in"), h=(0.16, "in")); d(m=(0.402, "lb"), L=(56.0, "cm"), b=(205.0, "mm"), h=(155.0, "thou")); d(m=(0.1712, "kg"), L=(0.551, "m"), b=(19.9, "cm"), h=(3.95, "mm"))
def readings(m, L, b, **h):
    v = list(h.values()); return {"density": (m / (L * b * np.mean(v)), "kg/m3"), "thickness_mean": (float(np.mean(v)), "mm"), "thickness_sd": (float(np.std(v, ddof=1)), "mm")}
fn("density_mean_of_thickness_readings", 1, readings, 1e-4)(m=(6.1, "oz"), L=(21.5, "in"), b=(202.0, "mm"), h1=(0.142, "in"), h2=(3.7, "mm"), h3=(0.139, "in"), h4=(3.55, "mm"))
fn("areal_mass", 1, lambda m, L, b: {"areal_mass": (m / L / b, "g/m2")})(m=(5.4, "oz"), L=(21.25, "in"), b=(8.125, "in"))
fn("moisture_content_oven_dry", 1, lambda m_wet, m_dry: {"MC": ((m_wet - m_dry) / m_dry, "%MC")})(m_wet=(0.93, "oz"), m_dry=(24.2, "g"))
fn("moisture_wet_basis_to_dry_basis", 1, lambda MC_wet: {"MC": (MC_wet / (1 - MC_wet), "%MC")})(MC_wet=(14.5, "%MC"))
GM = lambda Gb, M: Gb / (1 - 0.265 * max(0, (0.30 - M) / 0.30) * Gb)
back = lambda G, M: G / (1 + 0.265 * max(0, (0.30 - M) / 0.30) * G)
fn("density_from_basic_specific_gravity", 1, lambda Gb, M: {"G_M": (GM(Gb, M), "1"), "density": (1000 * GM(Gb, M) * (1 + M), "lb/ft3")})(Gb=(0.56, "1"), M=(7.0, "%MC"))
r = fn("density_to_reference_moisture", 1, lambda rho, M, M_ref: {"density_ref": (1000 * GM(back(rho / 1000 / (1 + M), M), M_ref) * (1 + M_ref), "kg/m3")}); r(rho=(26.5, "lb/ft3"), M=(6.5, "%MC"), M_ref=(12.0, "%MC")); r(rho=(0.84, "g/cm3"), M=(11.0, "%MC"), M_ref=(6.0, "%MC"))
fn("density_from_basic_specific_gravity_and_shrinkage", 1, lambda Gb, S0, M: {"G_M": (Gb / (1 - S0 * (1 - M / 0.3)), "1"), "density": (1000 * Gb / (1 - S0 * (1 - M / 0.3)) * (1 + M), "kg/m3")})(Gb=(0.44, "1"), S0=(9.8, "% of green"), M=(9.0, "%MC"))
fn("specific_gravity_oven_dry_mass_volume_at_M", 1, lambda rho, M: {"G_M": (rho / 1000 / (1 + M), "1"), "Gb": (back(rho / 1000 / (1 + M), M), "1")})(rho=(0.51, "g/cm3"), M=(8.5, "%MC"))
fn("shrinkage_dimension_change", 1, lambda D1, M1, M2, S: {"D2": (D1 * (1 - S * (0.3 - M2) / 0.3) / (1 - S * (0.3 - M1) / 0.3), "mm")})(D1=(8.25, "in"), M1=(14.0, "%MC"), M2=(6.0, "%MC"), S=(7.2, "% of green"))
def emc(T, H):
    W = 349 + 1.29 * T + 0.0135 * T * T; K = 0.805 + 0.000736 * T - 0.00000273 * T * T; K1 = 6.27 - 0.00938 * T - 0.000303 * T * T; K2 = 1.91 + 0.0407 * T - 0.000293 * T * T; x = K * H
    return 1800 / W * (x / (1 - x) + (K1 * x + 2 * K1 * K2 * x * x) / (1 + K1 * x + K1 * K2 * x * x))
case("equilibrium_moisture_content", 1, {"T": (26.0, "degC"), "RH": (55.0, "%")}, {"EMC": (emc(26, .55), "%MC", 0.05)}); case("equilibrium_moisture_content", 1, {"T": (59.0, "degF"), "RH": (0.38, "1")}, {"EMC": (emc(15, .38), "%MC", 0.05)})

three = lambda F, y, L, b, h: {"E": (F * L**3 / (4 * b * h**3 * y), "GPa")}
t = fn("E_three_point_bending", 2, three); t(F=(400.0, "gf"), y=(71.0, "thou"), L=(17.5, "in"), b=(7.9, "in"), h=(0.118, "in")); t(F=(1.1, "lbf"), y=(1.6, "mm"), L=(45.0, "cm"), b=(198.0, "mm"), h=(3.1, "mm"))
fn("E_three_point_from_mass", 2, lambda m, y, L, b, h: {"E": (m * g0 * L**3 / (4 * b * h**3 * y), "GPa")})(m=(1.0, "lb"), y=(1.72, "mm"), L=(430.0, "mm"), b=(7.8, "in"), h=(3.05, "mm"))
fn("E_cantilever", 2, lambda F, y, L, b, h: {"E": (4 * F * L**3 / (b * h**3 * y), "Mpsi")})(F=(90.0, "gf"), y=(0.16, "in"), L=(9.5, "in"), b=(1.5, "in"), h=(0.13, "in"))
fn("E_three_point_shear_corrected", 2, lambda E_app, E_over_G, L, h, k: {"E_true": (E_app * (1 + E_over_G * (h / L)**2 / k), "GPa")})(E_app=(1.55, "Mpsi"), E_over_G=(13.5, "1"), L=(14.0, "in"), h=(0.75, "in"), k=(5 / 6, "1"))
X = [4.730040744862704, 7.853204624095838, 10.995607838001671]
bar = lambda n, m, f, L, b, h: 48 * math.pi**2 / X[n]**4 * m * f**2 * L**3 / (b * h**3)
e = fn("E_free_free_bar", 2, lambda m, f, L, b, h: {"E": (bar(0, m, f, L, b, h), "GPa")}, 2e-4); e(m=(0.51, "oz"), f=(88.2, "Hz"), L=(17.0, "in"), b=(1.1, "in"), h=(0.121, "in")); e(m=(61.3, "g"), f=(0.0743, "kHz"), L=(550.0, "mm"), b=(2.5, "in"), h=(150.0, "thou"))
fn("E_free_free_bar_second_mode", 2, lambda m, f, L, b, h: {"E": (bar(1, m, f, L, b, h), "GPa")})(m=(14.2, "g"), f=(255.0, "Hz"), L=(16.5, "in"), b=(25.4, "mm"), h=(0.12, "in"))
fn("free_free_bar_frequency", 2, lambda E, rho, L, h: {f"f{i + 1}": (X[i]**2 * h / (4 * math.pi * math.sqrt(3) * L**2) * math.sqrt(E / rho), "Hz") for i in range(3)})(E=(1.4, "Mpsi"), rho=(27.0, "lb/ft3"), L=(20.0, "in"), h=(0.14, "in"))
def timoshenko(E, G, rho, L, h, k, modes):
    # free-free Timoshenko beam by Chebyshev-Ritz in w and the rotation: converges from above to the exact roots
    N = 26; x, w = np.polynomial.legendre.leggauss(60); B = np.array([C.chebval(x, np.eye(N)[i]) for i in range(N)]); D = np.array([C.chebval(x, C.chebder(np.eye(N)[i])) if i else 0 * x for i in range(N)]) * 2 / L
    J = w * L / 2; I, A = h**3 / 12, h; m0 = (B * J) @ B.T; mwd = (D * J) @ D.T; mpd = (D * J) @ B.T
    K = np.block([[k * G * A * mwd, -k * G * A * mpd], [-k * G * A * mpd.T, E * I * mwd + k * G * A * m0]]); M = np.block([[rho * A * m0, 0 * m0], [0 * m0, rho * I * m0]])
    v = np.sort(linalg.eigvalsh(K, M)); return np.sqrt(v[2:2 + modes]) / 2 / math.pi
def tb(E, G, rho, L, h, k):
    f = timoshenko(E, G, rho, L, h, k, 2); return {"f1": (float(f[0]), "Hz"), "f2": (float(f[1]), "Hz")}
fn("bar_Timoshenko_frequency", 2, tb, 1e-5)(E=(1.5, "Mpsi"), G=(0.62, "GPa"), rho=(25.0, "lb/ft3"), L=(15.0, "in"), h=(0.9, "in"), k=(5 / 6, "1"))
fn("bar_shear_correction_factor", 2, lambda E_over_G, h_over_L, k: {"T": (1 + h_over_L**2 / 12 * (49.481 + 12.303 * E_over_G / k), "1")}, 1.5e-3)(E_over_G=(14.0, "1"), h_over_L=(0.038, "1"), k=(5 / 6, "1"))
T1 = lambda n, q: 1 + 6.585 * (1 + 0.0752 * n + 0.8109 * n * n) * q**2 - 0.868 * q**4 - 8.340 * (1 + 0.2023 * n + 2.173 * n * n) * q**4 / (1 + 6.338 * (1 + 0.1408 * n + 1.536 * n * n) * q**2)
fn("bar_isotropic_correction_ASTM", 2, lambda poisson, t_over_L: {"T1": (T1(poisson, t_over_L), "1")})(poisson=(0.22, "1"), t_over_L=(0.08, "1"))
fn("E_longitudinal_resonance", 2, lambda rho, L, f: {"c": (2 * L * f, "m/s"), "E": (rho * (2 * L * f)**2, "Mpsi")})(rho=(24.2, "lb/ft3"), L=(21.6, "in"), f=(4.71, "kHz"))
fn("E_time_of_flight", 2, lambda rho, L, t: {"c": (L / t, "m/s"), "E": (rho * (L / t)**2, "GPa")})(rho=(0.39, "g/cm3"), L=(22.0, "in"), t=(0.101, "ms"))
adj = lambda P12, Pg, M, Mp: P12 * (P12 / Pg)**((0.12 - M) / (Mp - 0.12)) if M < Mp else Pg
fn("property_moisture_adjustment", 2, lambda P12, Pg, M, Mp: {"P": (adj(P12, Pg, M, Mp), "GPa")})(P12=(1.82, "Mpsi"), Pg=(1.41, "Mpsi"), M=(16.0, "%MC"), Mp=(23.0, "%MC"))
fn("property_back_to_12_percent", 2, lambda P, ratio, M, Mp: {"P12": (P * ratio**(-(0.12 - M) / (Mp - 0.12)), "GPa")})(P=(1.7, "Mpsi"), ratio=(1.31, "1"), M=(6.2, "%MC"), Mp=(25.0, "%MC"))
node = optimize.brentq(lambda s: (math.cosh(X[0] * s) + math.cos(X[0] * s)) - (math.cosh(X[0]) - math.cos(X[0])) / (math.sinh(X[0]) - math.sin(X[0])) * (math.sinh(X[0] * s) + math.sin(X[0] * s)), 0.1, 0.4)
fn("holding_points_bending_mode", 2, lambda L: {"x1": (node * L, "mm"), "x2": ((1 - node) * L, "mm")}, 1e-4)(L=(21.5, "in"))
def torsion(rho, f, L, b, h):
    J = b * h**3 * (1 / 3 - 64 / math.pi**5 * h / b * sum(math.tanh(n * math.pi * b / 2 / h) / n**5 for n in range(1, 60, 2))); return {"G": (rho * (2 * L * f)**2 * b * h * (b * b + h * h) / 12 / J, "GPa")}
fn("G_torsion_strip", 2, torsion, 2e-3)(rho=(26.0, "lb/ft3"), f=(182.0, "Hz"), L=(20.0, "in"), b=(1.75, "in"), h=(0.13, "in"))

def ritz(a, b, h, rho, EL, ER, G, nu, count=6, N=13):
    mu = 1 - nu * nu * ER / EL; DL, DR, D1, Dk = EL * h**3 / 12 / mu, ER * h**3 / 12 / mu, nu * ER * h**3 / 12 / mu, G * h**3 / 12
    x, w = np.polynomial.legendre.leggauss(40)
    P = lambda k, L: np.array([C.chebval(x, C.chebder(np.eye(N)[i], k)) if k <= i else 0 * x for i in range(N)]) * (2 / L)**k if k else np.array([C.chebval(x, np.eye(N)[i]) for i in range(N)])
    I = lambda p, q, L: (P(p, L) * (w * L / 2)) @ P(q, L).T
    K = DL * np.kron(I(2, 2, a), I(0, 0, b)) + DR * np.kron(I(0, 0, a), I(2, 2, b)) + D1 * (np.kron(I(2, 0, a), I(0, 2, b)) + np.kron(I(0, 2, a), I(2, 0, b))) + 4 * Dk * np.kron(I(1, 1, a), I(1, 1, b))
    M = rho * h * np.kron(I(0, 0, a), I(0, 0, b)); ev, vec = linalg.eigh(K, M)
    fr = np.sqrt(np.abs(ev)) / 2 / math.pi
    ix = np.arange(N * N) // N; iy = np.arange(N * N) % N
    lab = []
    for j in range(3, 3 + count + 4):
        v = vec[:, j] ** 2; lab.append((bool(v[ix % 2 == 1].sum() > v[ix % 2 == 0].sum()), bool(v[iy % 2 == 1].sum() > v[iy % 2 == 0].sum())))
    return fr[3:3 + count + 4], lab, vec[:, 3:3 + count + 4]
def forward(a_along, b_across, h, rho, E_L, E_R, G_LR, nu_LR):
    f, lab, _ = ritz(a_along, b_across, h, rho, E_L, E_R, G_LR, nu_LR); twist = next(float(f[i]) for i in range(len(lab)) if lab[i] == (True, True)); ee = [float(f[i]) for i in range(len(lab)) if lab[i] == (False, False)][:2]
    strip = [X[0]**2 * h / (4 * math.pi * math.sqrt(3)) * math.sqrt(E / rho) / s**2 for E, s in ((E_L, a_along), (E_R, b_across))]; mixed = max(strip) / min(strip) < 1.25
    out = {f"f{i + 1}": (float(f[i]), "Hz") for i in range(6)}; out["f_twist"] = (twist, "Hz")
    if not mixed: long = min(ee, key=lambda v: abs(v - strip[0])); out["f_long"] = (long, "Hz"); out["f_cross"] = ([v for v in ee if v != long][0], "Hz")
    out["mixing_caution"] = (mixed, "flag"); return out
p = fn("free_orthotropic_plate_forward", 3, forward, 2e-3)
p(a_along=(21.5, "in"), b_across=(8.0, "in"), h=(0.15, "in"), rho=(25.5, "lb/ft3"), E_L=(1.6, "Mpsi"), E_R=(0.13, "Mpsi"), G_LR=(0.68, "GPa"), nu_LR=(0.37, "1"))
p(a_along=(480.0, "mm"), b_across=(370.0, "mm"), h=(2.6, "mm"), rho=(0.84, "g/cm3"), E_L=(12.5, "GPa"), E_R=(2.4, "GPa"), G_LR=(1.7, "GPa"), nu_LR=(0.4, "1"))
p(a_along=(400.0, "mm"), b_across=(205.0, "mm"), h=(3.0, "mm"), rho=(400.0, "kg/m3"), E_L=(10.5, "GPa"), E_R=(0.8, "GPa"), G_LR=(700.0, "MPa"), nu_LR=(0.37, "1"))
def inverse(true, a, b, h, nu, units):
    f, lab, _ = ritz(a, b, h, true["rho"], true["EL"], true["ER"], true["G"], nu); tw = next(float(f[i]) for i in range(len(lab)) if lab[i] == (True, True)); ee = [float(f[i]) for i in range(len(lab)) if lab[i] == (False, False)][:2]; s = X[0]**2 * h / (4 * math.pi * math.sqrt(3)) * math.sqrt(true["EL"] / true["rho"]) / a**2; lo = min(ee, key=lambda v: abs(v - s)); cr = [v for v in ee if v != lo][0]
    case("free_orthotropic_plate_inverse", 3, {"a_along": to(a, units[0]), "b_across": to(b, units[0]), "h": to(h, units[1]), "m": to(true["rho"] * a * b * h, units[2]), "f_long": (lo, "Hz"), "f_cross": (cr, "Hz"), "f_twist": (tw, "Hz"), "nu_LR": (nu, "1")}, {"E_L": to(true["EL"], "GPa"), "E_R": to(true["ER"], "GPa"), "G_LR": to(true["G"], "GPa")}, 5e-3)
inverse({"rho": 385, "EL": 9.7e9, "ER": 0.71e9, "G": 0.66e9}, 0.56, 0.2, 0.0037, 0.37, ("in", "thou", "oz")); inverse({"rho": 820, "EL": 13.1e9, "ER": 2.2e9, "G": 1.55e9}, 0.54, 0.2, 0.0034, 0.37, ("cm", "mm", "lb"))
K1 = 48 * math.pi**2 / X[0]**4
fn("plate_quick_estimates", 3, lambda a, b, h, rho, f_long, f_cross, f_twist: {"E_L": (K1 * rho * f_long**2 * a**4 / h**2, "GPa"), "E_R": (K1 * rho * f_cross**2 * b**4 / h**2, "GPa"), "G_LR": (math.pi**2 / 12 * rho * (f_twist * a * b / h)**2, "GPa")}, 3e-4)(a=(21.7, "in"), b=(8.1, "in"), h=(0.155, "in"), rho=(25.0, "lb/ft3"), f_long=(70.1, "Hz"), f_cross=(138.0, "Hz"), f_twist=(48.2, "Hz"))
fn("poisson_reciprocity", 3, lambda nu_LR, E_L, E_R: {"nu_RL": (nu_LR * E_R / E_L, "1"), "one_minus_product": (1 - nu_LR**2 * E_R / E_L, "1")})(nu_LR=(0.42, "1"), E_L=(1.83, "Mpsi"), E_R=(1.66, "GPa"))
fn("critical_aspect_ratio", 3, lambda E_L, E_R: {"aspect": ((E_L / E_R)**0.25, "1")})(E_L=(1.95, "Mpsi"), E_R=(2.3, "GPa"))
def ss(a, b, h, rho, E_L, E_R, G_LR, nu_LR):
    mu = 1 - nu_LR**2 * E_R / E_L; DL, DR = E_L * h**3 / 12 / mu, E_R * h**3 / 12 / mu; D1, Dk = nu_LR * DR, G_LR * h**3 / 12
    f = lambda m, n: math.pi / 2 * math.sqrt((DL * m**4 / a**4 + 2 * (D1 + 2 * Dk) * m * m * n * n / a**2 / b**2 + DR * n**4 / b**4) / rho / h); return {"f11": (f(1, 1), "Hz"), "f21": (f(2, 1), "Hz")}
fn("simply_supported_orthotropic_plate", 3, ss)(a=(19.0, "in"), b=(14.5, "in"), h=(0.1, "in"), rho=(24.5, "lb/ft3"), E_L=(1.55, "Mpsi"), E_R=(0.12, "Mpsi"), G_LR=(0.105, "Mpsi"), nu_LR=(0.4, "1"))
fn("air_loading_upper_bound", 3, lambda rho, h, k, rho_air: {"f_ratio": (1 / math.sqrt(1 + 2 * rho_air / (k * rho * h)), "1")})(rho=(25.0, "lb/ft3"), h=(0.11, "in"), k=(9.4, "rad/m"), rho_air=(1.18, "kg/m3"))

fn("sound_speed_radiation_ratio_impedance", 4, lambda E, rho: {"c": (math.sqrt(E / rho), "m/s"), "R": (math.sqrt(E / rho**3), "m4/(kg s)"), "z": (math.sqrt(E * rho), "kg/(m2 s)"), "specific_modulus": (E / rho, "m2/s2")})(E=(1.72, "Mpsi"), rho=(0.44, "g/cm3"))
kb = 4 * math.pi * math.sqrt(3) / X[0]**2
fn("radiation_ratio_without_thickness", 4, lambda f, L, b, m: {"R": (kb * f * L**3 * b / m, "m4/(kg s)")}, 2e-4)(f=(71.4, "Hz"), L=(21.6, "in"), b=(8.1, "in"), m=(6.4, "oz"))
fn("sound_speed_from_bar", 4, lambda f, L, h: {"c": (kb * f * L**2 / h, "m/s")}, 2e-4)(f=(59.0, "Hz"), L=(22.0, "in"), h=(135.0, "thou"))
fn("plate_bending_stiffness", 4, lambda E, h, nu_LR, nu_RL: {"D": (E * h**3 / 12 / (1 - nu_LR * nu_RL), "lbf in")})(E=(1.65, "Mpsi"), h=(0.102, "in"), nu_LR=(0.42, "1"), nu_RL=(0.055, "1"))
fn("Q_from_bandwidth", 4, lambda f0, df: {"Q": (f0 / df, "1"), "tan_delta": (df / f0, "1"), "zeta": (df / f0 / 2, "1"), "decrement": (math.pi * df / f0, "1")})(f0=(0.182, "kHz"), df=(1.9, "Hz"))
fn("Q_from_decay_time_constant", 4, lambda f0, tau: {"Q": (math.pi * f0 * tau, "1"), "T60": (math.log(1000) * tau, "s"), "tan_delta": (1 / (math.pi * f0 * tau), "1")})(f0=(147.0, "Hz"), tau=(310.0, "ms"))
fn("Q_from_T60", 4, lambda f0, T60: {"Q": (math.pi * f0 * T60 / math.log(1000), "1")})(f0=(0.22, "kHz"), T60=(870.0, "ms"))
fn("Q_from_log_decrement", 4, lambda a1, an, n: {"decrement": (math.log(a1 / an) / n, "1"), "Q": (math.pi / (math.log(a1 / an) / n), "1")})(a1=(3.2, "1"), an=(0.9, "1"), n=(18, "1"))
fn("Q_from_dB_slope", 4, lambda f0, slope_dB_per_s: {"Q": (math.pi * f0 * 20 / math.log(10) / slope_dB_per_s, "1")})(f0=(0.098, "kHz"), slope_dB_per_s=(24.0, "dB/s"))
case("frequency_resolution", 4, {"fs": (48.0, "kHz"), "N": (16384, "1"), "f0": (110.0, "Hz")}, {"df": (48000 / 16384, "Hz"), "half_bin_cents": (1200 * math.log2((110 + 48000 / 32768) / 110), "cents", 0.01), "u_E_half_bin": (100 * 2 * (48000 / 16384 / 2 / math.sqrt(3)) / 110, "%")})
fn("bandwidth_from_decay", 4, lambda tau: {"df": (1 / math.pi / tau, "Hz")})(tau=(275.0, "ms"))

fn("equal_bending_stiffness_thickness", 5, lambda h1, E1, E2: {"h2": (h1 * (E1 / E2)**(1 / 3), "thou")})(h1=(0.1, "in"), E1=(1.6, "Mpsi"), E2=(9.3, "GPa"))
fn("equal_areal_mass_thickness", 5, lambda h1, rho1, rho2: {"h2": (h1 * rho1 / rho2, "mm")})(h1=(98.0, "thou"), rho1=(25.0, "lb/ft3"), rho2=(0.36, "g/cm3"))
fn("equal_frequency_thickness", 5, lambda h1, E1, rho1, E2, rho2: {"h2": (h1 * math.sqrt(E1 / rho1 * rho2 / E2), "mm")})(h1=(0.1, "in"), E1=(1.6, "Mpsi"), rho1=(25.6, "lb/ft3"), E2=(8.4, "GPa"), rho2=(340.0, "kg/m3"))
fn("mass_penalty_of_substitution", 5, lambda E1, rho1, E2, rho2: {"mass_ratio_equal_stiffness": (rho2 / rho1 * (E1 / E2)**(1 / 3), "1"), "mass_ratio_equal_frequency": (math.sqrt(rho2**3 / E2 / (rho1**3 / E1)), "1"), "R_ratio": (math.sqrt(E2 / rho2**3 / (E1 / rho1**3)), "1")})(E1=(1.5, "Mpsi"), rho1=(0.4, "g/cm3"), E2=(12.6, "GPa"), rho2=(45.0, "lb/ft3"))
fn("equal_deflection_thickness", 5, lambda h1, y1, y2: {"h2": (h1 * (y1 / y2)**(1 / 3), "mm")})(h1=(125.0, "thou"), y1=(0.04, "in"), y2=(1.5, "mm"))
fn("frequency_change_on_thinning", 5, lambda f1, h1, h2: {"f2": (f1 * h2 / h1, "Hz")})(f1=(74.0, "Hz"), h1=(0.16, "in"), h2=(2.9, "mm"))
def target(f_target, a, b, rho, E_L, E_R, G_LR, nu_LR):
    h = optimize.brentq(lambda h: ss(a, b, h, rho, E_L, E_R, G_LR, nu_LR)["f11"][0] - f_target, 1e-4, 0.1); return {"h": (h, "mm")}
fn("target_thickness_simply_supported", 5, target)(f_target=(41.0, "Hz"), a=(18.5, "in"), b=(14.0, "in"), rho=(25.0, "lb/ft3"), E_L=(1.5, "Mpsi"), E_R=(0.11, "Mpsi"), G_LR=(0.7, "GPa"), nu_LR=(0.38, "1"))

for note, midi in (("F#3", 54), ("Bb2", 46), ("C4", 60), ("Cb4", 59), ("B#3", 60)): case("note_to_frequency", 6, {"note": (note, "note"), "A4": (442.0, "Hz")}, {"f": (442 * 2**((midi - 69) / 12), "Hz"), "midi": (midi, "1", 0)}, 1e-6)
for f, A, note, midi in ((185.3, 440.0, "F#3", 54), (99.0, 415.0, "G#2", 44), (0.2462, 442.0, "B3", 59)):
    hz = f * 1000 if f < 1 else f; case("frequency_to_note_and_cents", 6, {"f": (f, "kHz" if f < 1 else "Hz"), "A4": (A, "Hz")}, {"note": (note, "note"), "cents": (1200 * math.log2(hz / (A * 2**((midi - 69) / 12))), "cents", 0.01)})
case("interval_cents", 6, {"f1": (0.11, "kHz"), "f2": (104.5, "Hz")}, {"cents": (1200 * math.log2(104.5 / 110), "cents", 0.005)})
case("cents_to_modulus_change", 6, {"cents": (-35.0, "cents")}, {"f_ratio": (2**(-35 / 1200), "1"), "E_ratio": (2**(-35 / 600), "1")})
fn("string_tension", 6, lambda mu, L, f: {"T": (mu * (2 * L * f)**2, "lbf")})(mu=(0.00058, "kg/m"), L=(25.6, "in"), f=(246.9, "Hz"))
fn("plain_string_unit_mass", 6, lambda rho, d: {"mu": (rho * math.pi * d * d / 4, "g/m")})(rho=(1.07, "g/cm3"), d=(32.0, "thou"))
fn("string_tension_scale_change", 6, lambda T1, L1, L2: {"T2": (T1 * (L2 / L1)**2, "N")})(T1=(17.2, "lbf"), L1=(25.6, "in"), L2=(630.0, "mm"))
case("speed_of_sound_air", 6, {"t": (77.0, "degF")}, {"c": (331.3 * math.sqrt(1 + 25 / 273.15), "m/s")}, 1e-4)
fn("helmholtz_rigid_body", 6, lambda c, V, a, t, alpha: {"L_eff": (t + 2 * alpha * a, "mm"), "f": (c / 2 / math.pi * math.sqrt(math.pi * a * a / V / (t + 2 * alpha * a)), "Hz")})(c=(345.0, "m/s"), V=(12.4, "L"), a=(1.7, "in"), t=(0.11, "in"), alpha=(0.613, "1"))
def pistons(fA, fP, fAP):
    s, d = fA**2 + fP**2, math.sqrt((fP**2 - fA**2)**2 + 4 * fAP**4); return {"f_minus": (math.sqrt((s - d) / 2), "Hz"), "f_plus": (math.sqrt((s + d) / 2), "Hz")}
fn("two_piston_top_air", 6, pistons)(fA=(0.118, "kHz"), fP=(201.0, "Hz"), fAP=(98.0, "Hz"))
fn("two_piston_inverse", 6, lambda f_minus, f_plus, fA: {"fP": (math.sqrt(f_minus**2 + f_plus**2 - fA**2), "Hz"), "fAP": (((f_plus**2 - fA**2) * (fA**2 - f_minus**2))**0.25, "Hz")})(f_minus=(94.0, "Hz"), f_plus=(0.211, "kHz"), fA=(119.0, "Hz"))

q = lambda *v: math.sqrt(sum(x * x for x in v))
fn("uncertainty_bar_independent", 7, lambda um, uf, uL, ub, uh: {"u_E": (q(um, 2 * uf, 3 * uL, ub, 3 * uh), "%"), "u_rho": (q(um, uL, ub, uh), "%"), "u_R": (q(um, uf, 3 * uL, ub), "%"), "u_c": (q(uf, 2 * uL, uh), "%")})(um=(0.2, "%"), uf=(0.005, "1"), uL=(0.05, "%"), ub=(0.3, "%"), uh=(1.4, "%"))
def worked(m, um, f, uf, L, uL, b, ub, h, uh):
    E = bar(0, m, f, L, b, h); u = E * q(um / m, 2 * uf / f, 3 * uL / L, ub / b, 3 * uh / h); return {"E": (E, "GPa"), "u_E": (u, "GPa"), "U_E_k2": (2 * u, "GPa"), "share_of_h": ((3 * uh / h * E / u)**2, "%")}
fn("uncertainty_bar_worked", 7, worked, 1e-3)(m=(1.4, "oz"), um=(0.1, "g"), f=(63.2, "Hz"), uf=(0.15, "Hz"), L=(21.6, "in"), uL=(0.5, "mm"), b=(49.0, "mm"), ub=(5.0, "thou"), h=(0.13, "in"), uh=(1.5, "thou"))
fn("uncertainty_three_point", 7, lambda uF, uL, ub, uh, uy: {"u_E": (q(uF, 3 * uL, ub, 3 * uh, uy), "%")})(uF=(0.3, "%"), uL=(0.1, "%"), ub=(0.15, "%"), uh=(0.7, "%"), uy=(2.0, "%"))
fn("rectangular_to_standard_uncertainty", 7, lambda half_width: {"u": (half_width / math.sqrt(3), "mm")})(half_width=(2.5, "thou"))
fn("common_calliper_scale_error", 7, lambda g: {"E": ((1 + g)**-1 - 1, "%"), "rho": ((1 + g)**-3 - 1, "%"), "R": ((1 + g)**4 - 1, "%"), "c": (g, "%")})(g=(-0.7, "%"))
case("thickness_error_effect", 7, {"g": (-2.0, "%")}, {"E_from_mass": (100 * (0.98**-3 - 1), "%", 1e-6), "E_from_known_density": (100 * (0.98**-2 - 1), "%", 1e-6), "rho": (100 * (1 / 0.98 - 1), "%", 1e-6), "R": (0.0, "%", 1e-6), "c": (100 * (1 / 0.98 - 1), "%", 1e-6)})
fn("spurious_correlation_E_against_h", 7, lambda s, u, e: {"corr": (-3 * u * u / math.sqrt((e * e + 9 * u * u) * (s * s + u * u)), "1"), "slope_E_on_h": (-3 * u * u / (s * s + u * u), "1"), "slope_h_on_E": (-3 * u * u / (e * e + 9 * u * u), "1")}, 1e-4)(s=(4.0, "%"), u=(1.2, "%"), e=(0.09, "1"))
fn("spurious_correlation_R_against_density", 7, lambda e, d: {"corr": (-1.5 * d / math.sqrt(0.25 * e * e + 2.25 * d * d), "1"), "slope": (-1.5, "1")}, 1e-6)(e=(15.0, "%"), d=(6.0, "%"))
fn("two_methods_agree_En", 7, lambda x1, U1, x2, U2: {"En": (abs(x1 - x2) / math.hypot(U1, U2), "1")})(x1=(1.62, "Mpsi"), U1=(0.5, "GPa"), x2=(12.4, "GPa"), U2=(0.11, "Mpsi"))
fn("weighted_mean", 7, lambda x1, u1, x2, u2: {"mean": ((x1 / u1**2 + x2 / u2**2) / (u1**-2 + u2**-2), "GPa"), "u": ((u1**-2 + u2**-2)**-0.5, "GPa")})(x1=(1.62, "Mpsi"), u1=(0.25, "GPa"), x2=(11.9, "GPa"), u2=(0.06, "Mpsi"))
fn("uncertainty_plate_inverse", 7, lambda uf, ua, ub, uh, um: {"u_EL": (q(um, 2 * uf, 3 * ua, ub, 3 * uh), "%"), "u_ER": (q(um, 2 * uf, ua, 3 * ub, 3 * uh), "%"), "u_GLR": (q(um, 2 * uf, ua, ub, 3 * uh), "%")}, 1e-4)(uf=(0.2, "%"), ua=(0.05, "%"), ub=(0.1, "%"), uh=(1.1, "%"), um=(0.2, "%"))
rng = np.random.default_rng(3); n = 14; E = np.round(rng.normal(11, 1.8, n), 2); D = np.round(380 + 6 * (E - 11) + rng.normal(0, 20, n)); H = np.round(2.5 * (E / 11)**-0.3 * np.exp(rng.normal(0, .03, n)), 2)
from scipy import stats
x, y, z = np.log(E), np.log(H), np.log(D); l = stats.linregress(x, y); tq = stats.t.ppf(.975, n - 2); A = np.column_stack([np.ones(n), x, z]); beta, rs, *_ = np.linalg.lstsq(A, y, rcond=None); se = math.sqrt(rs[0] / (n - 3) * np.linalg.inv(A.T @ A)[1, 1]); res = lambda v: v - np.column_stack([np.ones(n), z]) @ np.linalg.lstsq(np.column_stack([np.ones(n), z]), v, rcond=None)[0]
case("rule_test_stiffer_tops_thinner", 7, {"E_raw_board": ([float(v) for v in E], "GPa"), "density": ([float(v) for v in D], "kg/m3"), "h_final": ([float(v) for v in H], "mm")}, {"n": (n, "1", 0), "loglog_slope": (float(l.slope), "1"), "slope_se": (float(l.stderr), "1"), "ci95_low": (float(l.slope - tq * l.stderr), "1"), "ci95_high": (float(l.slope + tq * l.stderr), "1"), "pearson_log": (float(l.rvalue), "1"), "p_two_sided": (float(l.pvalue), "1"), "spearman": (float(stats.spearmanr(E, H)[0]), "1"), "kendall_tau_b": (float(stats.kendalltau(E, H)[0]), "1"), "slope_given_density": (float(beta[1]), "1"), "slope_given_density_se": (se, "1"), "partial_corr_given_density": (float(np.corrcoef(res(x), res(y))[0, 1]), "1"), "interval_contains_minus_third": (bool(l.slope - tq * l.stderr <= -1 / 3 <= l.slope + tq * l.stderr), "flag"), "interval_contains_zero": (bool(l.slope - tq * l.stderr <= 0 <= l.slope + tq * l.stderr), "flag")}, 1e-5)
dd = [0.03, -0.01, 0.02, 0.01, -0.04]; s = math.sqrt(sum(v * v for v in dd) / 2 / len(dd)); case("repeatability_from_duplicates", 8, {f"d{i + 1}": (v, "mm") for i, v in enumerate(dd)}, {"s_repeat": (s, "mm"), "mean_difference": (sum(dd) / len(dd), "mm"), "repeatability_limit": (2.8 * s, "mm")})
ref, obs = [10.0, 20.0, 50.0, 100.0], [10.01, 20.03, 50.02, 100.09]; b = np.array(obs) - np.array(ref); l = stats.linregress(ref, b); case("gauge_bias_and_linearity", 8, {**{f"ref{i + 1}": (v, "g") for i, v in enumerate(ref)}, **{f"obs{i + 1}": (v, "g") for i, v in enumerate(obs)}}, {"bias": (float(b.mean()), "g"), "linearity_slope": (float(l.slope), "1"), "intercept": (float(l.intercept), "g")}, 1e-4)
case("species_ratios_to_moduli", 9, {"species": ("maple, sugar", "text"), "E_L": (1.83, "Mpsi"), "ER_over_EL": (0.132, "1"), "GLR_over_EL": (0.111, "1"), "nu_LR": (0.424, "1")}, {"E_R": (0.132 * 1.83 * U["Mpsi"] / 1e9, "GPa"), "G_LR": (0.111 * 1.83 * U["Mpsi"] / 1e9, "GPa"), "nu_RL": (0.424 * 0.132, "1"), "E_over_G": (1 / 0.111, "1")}, 1e-6)
def says(quantity, inputs, outcome): cases.append({"id": f"more-10-{len(cases)}", "quantity": quantity, "section": 10, "inputs": {k: {"value": v[0], "unit": v[1]} for k, v in inputs.items()}, "expected": {"outcome": {"value": outcome, "unit": "refuse|caution"}}, "source": {"kind": "computed", "basis": "derived", "citation": "policy", "note": ""}})
says("density_rectangular", {"m": (182, "g"), "L": (550, "mm"), "b": (0, "mm"), "h": (4, "mm")}, "refuse"); says("density_rectangular", {"m": (182, "mm"), "L": (550, "mm"), "b": (200, "mm"), "h": (4, "mm")}, "refuse"); says("density_rectangular", {"m": (18, "g"), "L": (550, "mm"), "b": (200, "mm"), "h": (4, "mm")}, "caution"); says("density_rectangular", {"m": (6, "oz"), "L": (21, "in"), "b": (8, "in"), "h": ("3/0", "in")}, "refuse"); says("density_rectangular", {"m": (6, "stone"), "L": (21, "in"), "b": (8, "in"), "h": (0.15, "in")}, "refuse")
says("moisture_content_oven_dry", {"m_wet": (24, "g"), "m_dry": (0, "g")}, "refuse"); says("property_moisture_adjustment", {"P12": (11, "GPa"), "Pg": (9, "GPa"), "M": (28, "%MC"), "Mp": (25, "%MC")}, "caution"); says("E_free_free_bar", {"m": (42, "g"), "f": (-60, "Hz"), "L": (550, "mm"), "b": (50, "mm"), "h": (3.4, "mm")}, "refuse"); says("density_to_reference_moisture", {"rho": (26, "lb/ft3"), "M": (38, "%MC"), "M_ref": (12, "%MC")}, "caution")
says("free_orthotropic_plate_inverse", {"a_along": (15, "in"), "b_across": (8, "in"), "f_long": (110, "Hz"), "f_cross": (121, "Hz")}, "caution"); says("Q_from_bandwidth", {"f0": (110, "Hz"), "df": (0.9, "Hz"), "record_length": (400, "ms")}, "caution"); says("poisson_reciprocity", {"nu_LR": (2.2, "1"), "E_L": (2, "GPa"), "E_R": (1.9, "GPa")}, "refuse"); says("two_piston_inverse", {"f_minus": (98, "Hz"), "f_plus": (202, "Hz"), "fA": (210, "Hz")}, "refuse"); says("uncertainty_three_point", {"uF": (0.2, "%"), "uL": (0.2, "%"), "ub": (0.2, "%"), "uh": (-1, "%"), "uy": (1.5, "%")}, "refuse"); says("measurement_text_to_number", {"text": ("2,500 g", "text")}, "caution"); says("measurement_text_to_number", {"text": ("3 1/0 in", "text")}, "refuse"); says("measurement_text_to_number", {"text": ("12 furlongs per", "text")}, "refuse"); says("correlation_small_sample", {"n": (5, "1"), "r": (0.8, "1")}, "caution"); says("note_to_frequency", {"note": ("H2", "note"), "A4": (440, "Hz")}, "refuse"); says("helmholtz_rigid_body", {"c": (343, "m/s"), "V": (0, "L"), "a": (42, "mm"), "t": (3, "mm"), "alpha": (0.85, "1")}, "refuse"); says("equilibrium_moisture_content", {"T": (20, "degC"), "RH": (130, "%")}, "refuse")
print(json.dumps(cases, indent=0))
