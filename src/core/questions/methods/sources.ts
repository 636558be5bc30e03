import type { Source } from "../../base/index.ts";

const published = (citation: string): Source => ({ citation, basis: "published" });

/** Where the statistical methods come from. */
export const sources = {
  draperSmith: published("Draper and Smith (1998), Applied Regression Analysis, 3rd ed., chapters 1 to 4"),
  mackinnonWhite: published(
    "MacKinnon and White (1985), Journal of Econometrics 29, 305-325; Long and Ervin (2000), The American Statistician 54, 217-224",
  ),
  belsley: published("Belsley, Kuh and Welsch (1980), Regression Diagnostics; Cook (1977), Technometrics 19, 15-18"),
  ancova: published(
    "Fisher (1932), Statistical Methods for Research Workers; Milliken and Johnson (2001), Analysis of Messy Data III",
  ),
  duan: published(
    "Draper and Smith (1998), Applied Regression Analysis, section 13.3; Duan (1983), JASA 78, 605-610 for the mean",
  ),
  bellMcCaffrey: published(
    "Bell and McCaffrey (2002), Survey Methodology 28, 169-181; Pustejovsky and Tipton (2018), JBES 36, 672-683",
  ),
  welch: published("Welch (1947), Biometrika 34, 28-35"),
  welchAnova: published("Welch (1951), Biometrika 38, 330-336; Brown and Forsythe (1974), Technometrics 16, 129-132"),
  gamesHowell: published("Games and Howell (1976), Journal of Educational Statistics 1, 113-125"),
  sen1968: published("Sen (1968), JASA 63, 1379-1389"),
  fisher: published("Fisher (1921), Metron 1, 3-32"),
  blandAltman: published(
    "Bland and Altman (1986), Lancet i, 307-310; (1999), Statistical Methods in Medical Research 8, 135-160",
  ),
  linnet: published("Linnet (1990), Statistics in Medicine 9, 1463-1473"),
  york: published("York, Evensen, Martinez and De Basabe Delgado (2004), American Journal of Physics 72, 367-375"),
  bonettWright: published("Spearman (1904); Bonett and Wright (2000), Psychometrika 65, 23-28 for the interval"),
  kendall: published(
    "Kendall (1970), Rank Correlation Methods; Fieller, Hartley and Pearson (1957), Biometrika 44, 470-481 for the interval",
  ),
  fuller: published("Fuller (1987), Measurement Error Models, section 1.2"),
  kruskalWallis: published("Kruskal and Wallis (1952), JASA 47, 583-621"),
  cohen: published("Cohen (1988), Statistical Power Analysis, chapter 9, by the noncentral t law"),
  fleiss: published(
    "Cohen (1968), Psychological Bulletin 70, 213-220; Fleiss, Cohen and Everitt (1969), ibid. 72, 323-327 for the error",
  ),
  wilson: published("Wilson (1927), JASA 22, 209-212; Fisher (1935), The Design of Experiments, section 11"),
} as const;
