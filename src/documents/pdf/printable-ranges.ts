/**
 * Every character that both faces of the documents' fonts can show, regular and bold, as ranges of code points in
 * hexadecimal: Libertinus Serif and, for what it lacks, DejaVu Sans Mono, as the typesetter carries them. Found by
 * setting each assigned character; a test sets them all again. Latin, Greek, Cyrillic, Hebrew, Arabic, fractions and
 * signs are in it; emoji and ideographs are not.
 */
export const printableRanges = `
20-7e a0-34e 350-36f 374-377 37a-37f 384-38a 38c 38e-3a1 3a3-3ce 3d0-3e1 3f0-45f 462-463 470-477 490-4c4
4c7-4cc 4cf-4f9 510-511 51a-51d 531-556 559-55f 561-587 589-58a 5b0-5c3 5c6 5d0-5ea 5f0-5f4 606-607 609-60a
60c 615 61b 61f 621-63a 640-655 65a 660-66d 674 679-67b 67e-680 683-684 686-687 691 698 6a4 6a9 6af 6be 6cc
6f0-6f9 e3f e81-e82 e84 e87-e88 e8a e8d e94-e97 e99-e9f ea1-ea3 ea5 ea7 eaa-eab ead-eb9 ebb-ebc ec8-ecd
10d0-10fc 17c1-17c3 1d02 1d08-1d09 1d14 1d16-1d17 1d1d-1d1f 1d2c-1d2e 1d30-1d3c 1d3e-1d5f 1d62-1d67
1d77-1d78 1d7b 1d85 1d9b-1db7 1db9-1dbf 1e00-1e9b 1e9e-1ef9 1f00-1f15 1f18-1f1d 1f20-1f45 1f48-1f4d
1f50-1f57 1f59 1f5b 1f5d 1f5f-1f7d 1f80-1fb4 1fb6-1fc4 1fc6-1fd3 1fd6-1fdb 1fdd-1fef 1ff2-1ff4 1ff6-1ffe
2000-200a 200c-200d 2010-2027 202f-2037 2039-203f 2042 2044-204b 204f 205f 2070-2071 2074-208e 2090-209c
20a0-20b5 20b8-20ba 20bd 20bf 2100-2103 2105-2106 2109 210c-210f 2111 2113 2115-2117 2119-211a 211c-211d
2120 2122 2124 2126-2127 212a-212b 212e 2135-2139 2148 214f-2151 2153-2184 2189 2190-2220 2223-222d
2234-223d 2241-226b 226d-228b 228d-22a5 22ac 22b2-22b5 22b8 22c2-22c6 22cd-22d1 22da-22ed 22ef 2300-2306
2308-2315 2318-2319 231c-2321 2325-232b 2335-237a 237d 2380-2383 2388-238b 2395 239b-23ae 23ce-23cf 23d3
2423 2460-2473 24ea 24ff-262f 2638-268b 2690-269c 26a0-26a5 26b0-26b1 2701-2704 2706-2709 270c-2727
2729-274b 274d 274f-2752 2756 2758-275e 2761-277f 2794 2798-27af 27b1-27be 27c2 27c5-27c6 27dc 27e0
27e6-27eb 27f5-27f7 2987-2988 2997-2998 29eb 29fa-29fb 2a00 2a2f 2a6a-2a6b 2b05-2b0d 2b12-2b1a 2c60-2c70
2c74-2c77 2c79-2c7a 2c7c-2c7f 2e17-2e18 2e1f 2e22-2e25 2e2e 3000 302e-302f a708-a716 a71b-a727 a789-a78e
a790-a791 a7aa a7f8-a7f9 fb01-fb02 fb1d fb1f fb29-fb36 fb38-fb3c fb3e fb40-fb41 fb43-fb44 fb46-fb4e
fb52-fb81 fb8a-fb95 fb9e-fb9f fbaa-fbad fbe8-fbe9 fbfc-fbff fe70-fe74 fe76-fefc fffc-fffd 1d106-1d107 1d55a
1f12f`
