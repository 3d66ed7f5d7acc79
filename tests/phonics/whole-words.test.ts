// Whole words in both accents: sounds, stress, syllables, and which letters say what, at which place. The sounds are those of dictionaries of
// Southern British (Wells, Longman Pronunciation Dictionary) and American English, from memory; letters and syllables are common practice, no source.
// In general-purpose dictionaries a weak vowel is now ə, now ɪ.
//
//   hurry: ˈhɜriː hur-ry h0-1=h urr1-4=ɜr{ur=ɜr}1 y4-5=iː0
//          letters with their places, sound, {what is taught, where that is another}, stress; < letters before an ending, ! ending, ° silent, ~ worn down

import { describe, expect, it } from 'vitest'
import type { Accent, Unit } from '../../src/phonics/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { toBlocks } from './blocks.ts'

function toText({ letters, base, spans, sound, key, kind, stress, reduced }: Unit): string {
  const places = spans.map(([from, to]) => `${from}-${to}`).join()
  const own = base === undefined ? letters : `${letters}<${base}`
  const taught = key === `${base ?? letters}=${sound}` ? '' : `{${key}}`
  const marks = `${kind === 'inflection' ? '!' : kind === 'silent' ? '°' : ''}${stress ?? ''}${reduced ? '~' : ''}`
  return `${own}${places}=${sound}${taught}${marks}`
}

function say(accent: Accent, word: string): string {
  const [first] = testPhonics(accent).read(word).pronunciations
  return [first?.ipa, first?.syllables.join('-'), ...(first?.units.map(toText) ?? [])].join(' ')
}

const LINES = `
  southern-british
    moustache: məsˈtɑːʃ mous-tache m0-1=m ou1-3=ə1 s3-4=s t4-5=t a5-6=ɑː2 che6-9=ʃ
    giraffe: dʒəˈrɑːf gi-raffe g0-1=dʒ i1-2=ə0~ r2-3=r a3-4=ɑː1 ffe4-7=f
    forest: ˈfɒrəst for-est f0-1=f o1-2=ɒ1 r2-3=r e3-4=ə0~ s4-5=s t5-6=t
    hurry: ˈhʌriː hur-ry h0-1=h u1-2=ʌ1 rr2-4=r y4-5=iː0
    fury: ˈfjʊəriː fu-ry f0-1=f u1-2=jʊə{u=juː}1 r2-3=r y3-4=iː0
    vary: ˈvɛəriː var-y v0-1=v a1-2=ɛə{a=eɪ}1 r2-3=r y3-4=iː0
    argument: ˈɑːɡjəmənt ar-gu-ment ar0-2=ɑː1 g2-3=ɡ u3-4=jə{u=juː}0 m4-5=m e5-6=ə0~ n6-7=n t7-8=t
    handsome: ˈhændsəm hand-some h0-1=h a1-2=æ1 n2-3=n d3-4=d s4-5=s o_e5-6,7-8=ə{o_e=ʌ}0 m6-7=m
    fire: faɪə fire f0-1=f ire1-4=aɪə1
    flower: ˈflaʊə flow-er f0-1=f l1-2=l ow2-4=aʊ1 er4-6=ə0
    cage: keɪdʒ cage c0-1=k a_e1-2=eɪ1 ge2-4=dʒ
    huge: hjuːdʒ huge h0-1=h u_e1-2=juː1 ge2-4=dʒ
    café: kəˈfeɪ ca-fe c0-1=k a1-2=ə0~ f2-3=f e3-4=eɪ1
    naïve: ˌnaɪˈiːv na-ive n0-1=n a1-2=aɪ2 i_e2-3,4-5=iː1 v3-4=v
    Zoë: ˈzəʊiː zo-e z0-1=z o1-2=əʊ1 e2-3=iː0
    C-a-t: kæt c-a-t c0-1=k a2-3=æ1 t4-5=t
    sh-i-p: ʃɪp sh-i-p sh0-2=ʃ i3-4=ɪ1 p5-6=p
    B-b-but: bbbʌt b-b-but b0-1=b b2-3=b b4-5=b u5-6=ʌ1 t6-7=t
    St-st-stop: stststɒp st-st-stop s0-1=s t1-2=t s3-4=s t4-5=t s6-7=s t7-8=t o8-9=ɒ1 p9-10=p
    tip-top: ˈtɪpˈtɒp tip-top t0-1=t i1-2=ɪ1 p2-3=p t4-5=t o5-6=ɒ1 p6-7=p
    -cat: kæt cat c1-2=k a2-3=æ1 t3-4=t
    cat-: kæt cat c0-1=k a1-2=æ1 t2-3=t
    happiness: ˈhæpiːnəs hap-pi-ness h0-1=h a1-2=æ1 pp2-4=p i<y4-5=iː0 n5-6=n e6-7=ə0~ ss7-9=s
    laziness: ˈleɪziːnəs la-zi-ness l0-1=l a1-2=eɪ1 z2-3=z i<y3-4=iː0 n4-5=n e5-6=ə0~ ss6-8=s
    homework: ˈhəʊmˌwɜːk home-work h0-1=h o_e1-2,3-4=əʊ1 m2-3=m w4-5=w or5-7=ɜː2 k7-8=k
    dribbling: ˈdrɪbəlɪŋ drib-bling d0-1=d r1-2=r i2-3=ɪ1 bb3-5=b l<le5-6=əl0 ing6-9=ɪŋ!0
    morning: ˈmɔːnɪŋ morn-ing m0-1=m or1-3=ɔː1 n3-4=n i4-5=ɪ0 ng5-7=ŋ
    mistake: mɪsˈteɪk mis-take m0-1=m i1-2=ɪ0 s2-3=s t3-4=t a_e4-5,6-7=eɪ1 k5-6=k
    discover: dɪsˈkʌvə dis-cov-er d0-1=d i1-2=ɪ0 s2-3=s c3-4=k o4-5=ʌ1 v5-6=v er6-8=ə0
    castle: ˈkɑːsəl cas-tle c0-1=k a1-2=ɑː1 st2-4=s le4-6=əl0
    whistle: ˈwɪsəl whis-tle wh0-2=w i2-3=ɪ1 st3-5=s le5-7=əl0
    ticket: ˈtɪkət tick-et t0-1=t i1-2=ɪ1 ck2-4=k e4-5=ə0~ t5-6=t
    tackle: ˈtækəl tack-le t0-1=t a1-2=æ1 ck2-4=k le4-6=əl0
    special: ˈspɛʃəl spe-cial s0-1=s p1-2=p e2-3=ɛ1 ci3-5=ʃ a5-6=ə0~ l6-7=l
    ocean: ˈəʊʃən o-cean o0-1=əʊ1 ce1-3=ʃ a3-4=ə0~ n4-5=n
    pigeon: ˈpɪdʒən pi-geon p0-1=p i1-2=ɪ1 ge2-4=dʒ o4-5=ə0~ n5-6=n
    mission: ˈmɪʃən mis-sion m0-1=m i1-2=ɪ1 ssion2-7=ʃən0
    passion: ˈpæʃən pas-sion p0-1=p a1-2=æ1 ssion2-7=ʃən0
    tune: tjuːn tune t0-1=t u_e1-2,3-4=juː1 n2-3=n
    duty: ˈdjuːtiː du-ty d0-1=d u1-2=juː1 t2-3=t y3-4=iː0
    furry: ˈfɜːriː fur-ry f0-1=f urr1-4=ɜːr{ur=ɜː}1 y4-5=iː0
    purr: pɜː purr p0-1=p urr1-4=ɜː{ur=ɜː}1
    area: ˈɛəriːə ar-e-a a0-1=ɛə{a=eɪ}1 r1-2=r e2-3=iː0 a3-4=ə0~
    parent: ˈpɛərənt par-ent p0-1=p a1-2=ɛə{a=eɪ}1 r2-3=r e3-4=ə0~ n4-5=n t5-6=t
    various: ˈvɛəriːəs var-i-ous v0-1=v a1-2=ɛə{a=eɪ}1 r2-3=r i3-4=iː0 ou4-6=ə0 s6-7=s
    carry: ˈkæriː car-ry c0-1=k a1-2=æ1 rr2-4=r y4-5=iː0
    hero: ˈhɪərəʊ he-ro h0-1=h e1-2=ɪə{e=iː}1 r2-3=r o3-4=əʊ0
    zero: ˈzɪərəʊ ze-ro z0-1=z e1-2=ɪə{e=iː}1 r2-3=r o3-4=əʊ0
    story: ˈstɔːriː sto-ry s0-1=s t1-2=t or2-4=ɔːr{or=ɔː}1 y4-5=iː0
    library: ˈlaɪˌbrəriː li-brar-y l0-1=l i1-2=aɪ1 b2-3=b r3-4=r ar4-6=ər{ar=ə}2 y6-7=iː0
    secondary: ˈsɛkənˌdəriː sec-on-dar-y s0-1=s e1-2=ɛ1 c2-3=k o3-4=ə0~ n4-5=n d5-6=d ar6-8=ər{ar=ə}2 y8-9=iː0
    necessary: ˈnɛsəˌsəriː nec-es-sar-y n0-1=n e1-2=ɛ1 c2-3=s e3-4=ə0~ ss4-6=s ar6-8=ər{ar=ə}2 y8-9=iː0
    ordinary: ˈɔːdəˌnəriː or-di-nar-y or0-2=ɔː1 d2-3=d i3-4=ə0~ n4-5=n ar5-7=ər{ar=ə}2 y7-8=iː0
    ceremony: ˈsɛrəˌməniː cer-e-mo-ny c0-1=s e1-2=ɛ1 r2-3=r e3-4=ə0~ m4-5=m o5-6=ə2~ n6-7=n y7-8=iː0
    matrimony: ˈmætrəˌməniː mat-ri-mo-ny m0-1=m a1-2=æ1 t2-3=t r3-4=r i4-5=ə0~ m5-6=m o6-7=ə2~ n7-8=n y8-9=iː0
    they’re: ðɛə they're th0-2=ð ey2-4=ɛ1 're4-7=ə
    you’re: jʊə you're y0-1=j ou1-3=ʊ1 're3-6=ə
    poor: pʊə poor p0-1=p oor1-4=ʊə1
    player: ˈpleɪə play-er p0-1=p l1-2=l ay2-4=eɪ1 er4-6=ə!0
    lawyer: ˈlɔːjə law-yer l0-1=l aw1-3=ɔː1 y3-4=j er4-6=ə0
    royal: ˈrɔɪəl roy-al r0-1=r oy1-3=ɔɪ1 a3-4=ə0~ l4-5=l
    admirer: ədˈmaɪərə ad-mir-er a0-1=ə0~ d1-2=d m2-3=m ir<ire3-5=aɪər{ire=aɪə}1 er5-7=ə!0
    choir: kwaɪə choir ch0-2=k oir2-5=waɪə1
    squire: skwaɪə squire s0-1=s qu1-3=kw ire3-6=aɪə1
    iron: ˈaɪən i-ron ir0-2=aɪə1 o2-3=° n3-4=n
    onion: ˈʌnjən on-ion o0-1=ʌ1 n1-2=n i2-3=j{i=iː} o3-4=ə0~ n4-5=n
    million: ˈmɪljən mil-lion m0-1=m i1-2=ɪ1 ll2-4=l i4-5=j{i=iː} o5-6=ə0~ n6-7=n
    bath: bɑːθ bath b0-1=b a1-2=ɑː1 th2-4=θ
    advantage: ædˈvɑːntɪdʒ ad-van-tage a0-1=æ0 d1-2=d v2-3=v a3-4=ɑː1 n4-5=n t5-6=t a6-7=ɪ0~ ge7-9=dʒ
    laugh: lɑːf laugh l0-1=l augh1-5=ɑːf1
    half: hɑːf half h0-1=h a1-2=ɑː1 lf2-4=f
    wander: ˈwɒndə wan-der w0-1=w a1-2=ɒ1 n2-3=n d3-4=d er4-6=ə0
    wallet: ˈwɒlət wal-let w0-1=w a1-2=ɒ1 ll2-4=l e4-5=ə0~ t5-6=t
    wallow: ˈwɒləʊ wal-low w0-1=w a1-2=ɒ1 ll2-4=l ow4-6=əʊ0
    talk: tɔːk talk t0-1=t a1-2=ɔː1 lk2-4=k
    walk: wɔːk walk w0-1=w a1-2=ɔː1 lk2-4=k
    warm: wɔːm warm w0-1=w ar1-3=ɔː1 m3-4=m
    swarm: swɔːm swarm s0-1=s w1-2=w ar2-4=ɔː1 m4-5=m
    quarrel: ˈkwɒrəl quar-rel qu0-2=kw a2-3=ɒ1 rr3-5=r e5-6=ə0~ l6-7=l
    because: bɪˈkɒz be-cause b0-1=b e1-2=ɪ0~ c2-3=k au3-5=ɒ1 se5-7=z
    sausage: ˈsɒsədʒ sau-sage s0-1=s au1-3=ɒ1 s3-4=s a4-5=ə0~ ge5-7=dʒ
    laundry: ˈlɔːndriː laun-dry l0-1=l au1-3=ɔː1 n3-4=n d4-5=d r5-6=r y6-7=iː0
    yacht: jɒt yacht y0-1=j a1-2=ɒ1 ch2-4=° t4-5=t
    was: wɒz was w0-1=w a1-2=ɒ1 s2-3=z
    what: wɒt what wh0-2=w a2-3=ɒ1 t3-4=t
    orange: ˈɒrəndʒ or-ange o0-1=ɒ1 r1-2=r a2-3=ə0~ n3-4=n ge4-6=dʒ
    tomorrow: təˈmɒˌrəʊ to-mor-row t0-1=t o1-2=ə0~ m2-3=m o3-4=ɒ1 rr4-6=r ow6-8=əʊ2
    worry: ˈwʌriː wor-ry w0-1=w o1-2=ʌ1 rr2-4=r y4-5=iː0
    courage: ˈkʌrədʒ cour-age c0-1=k ou1-3=ʌ1 r3-4=r a4-5=ə0~ ge5-7=dʒ
    squirrel: ˈskwɪrəl squir-rel s0-1=s qu1-3=kw i3-4=ɪ1 rr4-6=r e6-7=ə0~ l7-8=l
    stirring: ˈstɜːrɪŋ stir-ring s0-1=s t1-2=t irr<ir2-5=ɜːr{ir=ɜː}1 ing5-8=ɪŋ!0
    student: ˈstjuːdənt stu-dent s0-1=s t1-2=t u2-3=juː1 d3-4=d e4-5=ə0~ n5-6=n t6-7=t
    lieutenant: lɛfˈtɛnənt lieu-ten-ant l0-1=l ieu1-4=ɛf0 t4-5=t e5-6=ɛ1 n6-7=n a7-8=ə0~ n8-9=n t9-10=t
    dinosaur: ˈdaɪnəˌsɔː di-no-saur d0-1=d i1-2=aɪ1 n2-3=n o3-4=ə0~ s4-5=s au5-7=ɔː2 r7-8={r=r}°
    scissors: ˈsɪzəz scis-sors sc0-2=s i2-3=ɪ1 ss3-5=z or5-7=ə0 s7-8=z!
    clerk: klɑːk clerk c0-1=k l1-2=l er2-4=ɑː1 k4-5=k
    herb: hɜːb herb h0-1=h° er1-3=ɜː1 b3-4=b
    nephew: ˈnɛfjuː neph-ew n0-1=n e1-2=ɛ1 ph2-4=f ew4-6=juː0
    stories: ˈstɔːriːz sto-ries s0-1=s t1-2=t or2-4=ɔːr{or=ɔː}1 ie<y4-6=iː0 s6-7=z!
    carried: ˈkæriːd car-ried c0-1=k a1-2=æ1 rr2-4=r ie<y4-6=iː0 d6-7=d!
    argued: ˈɑːɡjuːd ar-gued ar0-2=ɑː1 g2-3=ɡ ue3-5=juː0 d5-6=d!
    cities: ˈsɪtiːz cit-ies c0-1=s i1-2=ɪ1 t2-3=t ie<y3-5=iː0 s5-6=z!
    giraffes: dʒəˈrɑːfs gi-raffes g0-1=dʒ i1-2=ə0~ r2-3=r a3-4=ɑː1 ffe4-7=f s7-8=s!
    puzzle: ˈpʌzəl puz-zle p0-1=p u1-2=ʌ1 zz2-4=z le4-6=əl0
    puzzling: ˈpʌzəlɪŋ puz-zling p0-1=p u1-2=ʌ1 zz2-4=z l<le4-5=əl0 ing5-8=ɪŋ!0
    middle: ˈmɪdəl mid-dle m0-1=m i1-2=ɪ1 dd2-4=d le4-6=əl0
    acre: ˈeɪkə a-cre a0-1=eɪ1 c1-2=k re2-4=ə0
    centre: ˈsɛntə cen-tre c0-1=s e1-2=ɛ1 n2-3=n t3-4=t re4-6=ə0
    twelve: twɛlv twelve t0-1=t w1-2=w e2-3=ɛ1 l3-4=l ve4-6=v
    exact: ɪɡzˈækt ex-act e0-1=ɪ0~ x1-2=ɡz a2-3=æ1 c3-4=k t4-5=t
    example: ɪɡzˈɑːmpəl ex-am-ple e0-1=ɪ0~ x1-2=ɡz a2-3=ɑː1 m3-4=m p4-5=p le5-7=əl0
    queen: kwiːn queen qu0-2=kw ee2-4=iː1 n4-5=n
    quickly: ˈkwɪkliː quick-ly qu0-2=kw i2-3=ɪ1 ck3-5=k l5-6=l y6-7=iː0
    science: ˈsaɪəns sci-ence sc0-2=s i2-3=aɪ1 e3-4=ə0~ n4-5=n ce5-7=s
    guess: ɡɛs guess gu0-2=ɡ e2-3=ɛ1 ss3-5=s
    guitar: ɡɪˈtɑː gui-tar gu0-2=ɡ i2-3=ɪ0 t3-4=t ar4-6=ɑː1
    build: bɪld build b0-1=b ui1-3=ɪ1 l3-4=l d4-5=d
    biscuit: ˈbɪskət bis-cuit b0-1=b i1-2=ɪ1 s2-3=s c3-4=k ui4-6=ə0 t6-7=t
    circuit: ˈsɜːkət cir-cuit c0-1=s ir1-3=ɜː1 c3-4=k ui4-6=ə0 t6-7=t
    rhyme: raɪm rhyme rh0-2=r y_e2-3,4-5=aɪ1 m3-4=m
    autumn: ˈɔːtəm au-tumn au0-2=ɔː1 t2-3=t u3-4=ə0~ mn4-6=m
    island: ˈaɪlənd is-land is0-2=aɪ1 l2-3=l a3-4=ə0~ n4-5=n d5-6=d
    doubt: daʊt doubt d0-1=d ou1-3=aʊ1 bt3-5=t
    answer: ˈɑːnsə an-swer a0-1=ɑː1 n1-2=n sw2-4=s er4-6=ə0
    sword: sɔːd sword sw0-2=s or2-4=ɔː1 d4-5=d
    two: tuː two tw0-2=t o2-3=uː1
    knee: niː knee kn0-2=n ee2-4=iː1
    wrist: rɪst wrist wr0-2=r i2-3=ɪ1 s3-4=s t4-5=t
    gnome: nəʊm gnome gn0-2=n o_e2-3,4-5=əʊ1 m3-4=m
    sign: saɪn sign s0-1=s i1-2=aɪ1 gn2-4=n
    column: ˈkɒləm col-umn c0-1=k o1-2=ɒ1 l2-3=l u3-4=ə0~ mn4-6=m
    climb: klaɪm climb c0-1=k l1-2=l i2-3=aɪ1 mb3-5=m
    thumb: θʌm thumb th0-2=θ u2-3=ʌ1 mb3-5=m
    rough: rʌf rough r0-1=r ough1-5=ʌf1
    though: ðəʊ though th0-2=ð ough2-6=əʊ1
    thought: θɔːt thought th0-2=θ ough2-6=ɔː1 t6-7=t
    through: θruː through th0-2=θ r2-3=r ough3-7=uː1
    bough: baʊ bough b0-1=b ough1-5=aʊ1
    cough: kɒf cough c0-1=k ough1-5=ɒf1
    eight: eɪt eight eigh0-4=eɪ1 t4-5=t
    weight: weɪt weight w0-1=w eigh1-5=eɪ1 t5-6=t
    height: haɪt height h0-1=h eigh1-5=aɪ1 t5-6=t
    key: kiː key k0-1=k ey1-3=iː1
    money: ˈmʌniː mon-ey m0-1=m o1-2=ʌ1 n2-3=n ey3-5=iː0
    they: ðeɪ they th0-2=ð ey2-4=eɪ1
    prey: preɪ prey p0-1=p r1-2=r ey2-4=eɪ1
    eye: aɪ eye eye0-3=aɪ1
    buy: baɪ buy b0-1=b uy1-3=aɪ1
    guy: ɡaɪ guy g0-1=ɡ uy1-3=aɪ1
    people: ˈpiːpəl peo-ple p0-1=p eo1-3=iː1 p3-4=p le4-6=əl0
    friend: frɛnd friend f0-1=f r1-2=r ie2-4=ɛ1 n4-5=n d5-6=d
    said: sɛd said s0-1=s ai1-3=ɛ1 d3-4=d
    says: sɛz says s0-1=s ay1-3=ɛ1 s3-4=z
    any: ˈɛniː an-y a0-1=ɛ1 n1-2=n y2-3=iː0
    many: ˈmɛniː man-y m0-1=m a1-2=ɛ1 n2-3=n y3-4=iː0
    once: wʌns once o0-1=wʌ1 n1-2=n ce2-4=s
    one: wʌn one o0-1=wʌ1 n1-2=n e2-3=°
    women: ˈwɪmən wom-en w0-1=w o1-2=ɪ1 m2-3=m e3-4=ə0~ n4-5=n
    busy: ˈbɪziː bus-y b0-1=b u1-2=ɪ1 s2-3=z y3-4=iː0
    pretty: ˈprɪtiː pret-ty p0-1=p r1-2=r e2-3=ɪ1 tt3-5=t y5-6=iː0
    Wednesday: ˈwɛnzˌdeɪ wednes-day w0-1=w e1-2=ɛ1 d2-3=° n3-4=n e4-5=° s5-6=z d6-7=d ay7-9=eɪ2
    oh: əʊ oh oh0-2=əʊ1
    create: kriːˈeɪt cre-ate c0-1=k r1-2=r e2-3=iː0 a_e3-4,5-6=eɪ1 t4-5=t
    being: ˈbiːɪŋ be-ing b0-1=b e1-2=iː1 ing2-5=ɪŋ!0
    idea: aɪˈdiːə i-de-a i0-1=aɪ0 d1-2=d e2-3=iː1 a3-4=ə0~
    lion: ˈlaɪən li-on l0-1=l i1-2=aɪ1 o2-3=ə0~ n3-4=n
    poem: ˈpəʊəm po-em p0-1=p o1-2=əʊ1 e2-3=ə0~ m3-4=m
    quiet: ˈkwaɪət qui-et qu0-2=kw i2-3=aɪ1 e3-4=ə0~ t4-5=t
    radio: ˈreɪdiːˌəʊ ra-di-o r0-1=r a1-2=eɪ1 d2-3=d i3-4=iː0 o4-5=əʊ2
    video: ˈvɪdiːəʊ vid-e-o v0-1=v i1-2=ɪ1 d2-3=d e3-4=iː0 o4-5=əʊ0
    museum: mjuːˈziːəm mu-se-um m0-1=m u1-2=juː0 s2-3=z e3-4=iː1 u4-5=ə0~ m5-6=m
    violin: vaɪəˈlɪn vi-o-lin v0-1=v i1-2=aɪ0 o2-3=ə0~ l3-4=l i4-5=ɪ1 n5-6=n
    piano: piːˈænəʊ pi-an-o p0-1=p i1-2=iː0 a2-3=æ1 n3-4=n o4-5=əʊ0
  general-american
    giraffe: dʒəˈræf gi-raffe g0-1=dʒ i1-2=ə0~ r2-3=r a3-4=æ1 ffe4-7=f
    forest: ˈfɔrəst for-est f0-1=f or1-3=ɔr1 e3-4=ə0~ s4-5=s t5-6=t
    hurry: ˈhɜriː hur-ry h0-1=h urr1-4=ɜr{ur=ɜr}1 y4-5=iː0
    fury: ˈfjʊriː fu-ry f0-1=f u1-2=jʊ{u=juː}1 r2-3=r y3-4=iː0
    vary: ˈvɛriː var-y v0-1=v a1-2=ɛ{a=eɪ}1 r2-3=r y3-4=iː0
    argument: ˈɑrɡjəmənt ar-gu-ment ar0-2=ɑr1 g2-3=ɡ u3-4=jə{u=juː}0 m4-5=m e5-6=ə0~ n6-7=n t7-8=t
    handsome: ˈhændsəm hand-some h0-1=h a1-2=æ1 n2-3=n d3-4=d s4-5=s o_e5-6,7-8=ə{o_e=ʌ}0 m6-7=m
    fire: faɪr fire f0-1=f ire1-4=aɪr1
    flower: ˈflaʊər flow-er f0-1=f l1-2=l ow2-4=aʊ1 er4-6=ər{er=ɜr}0
    cage: keɪdʒ cage c0-1=k a_e1-2=eɪ1 ge2-4=dʒ
    huge: hjuːdʒ huge h0-1=h u_e1-2=juː1 ge2-4=dʒ
    café: kəˈfeɪ ca-fe c0-1=k a1-2=ə0~ f2-3=f e3-4=eɪ1
    naïve: ˌnaɪˈiːv na-ive n0-1=n a1-2=aɪ2 i_e2-3,4-5=iː1 v3-4=v
    Zoë: ˈzoʊiː zo-e z0-1=z o1-2=oʊ1 e2-3=iː0
    C-a-t: kæt c-a-t c0-1=k a2-3=æ1 t4-5=t
    sh-i-p: ʃɪp sh-i-p sh0-2=ʃ i3-4=ɪ1 p5-6=p
    B-b-but: bbbʌt b-b-but b0-1=b b2-3=b b4-5=b u5-6=ʌ1 t6-7=t
    St-st-stop: stststɑp st-st-stop s0-1=s t1-2=t s3-4=s t4-5=t s6-7=s t7-8=t o8-9=ɑ1 p9-10=p
    tip-top: ˈtɪpˈtɑp tip-top t0-1=t i1-2=ɪ1 p2-3=p t4-5=t o5-6=ɑ1 p6-7=p
    -cat: kæt cat c1-2=k a2-3=æ1 t3-4=t
    cat-: kæt cat c0-1=k a1-2=æ1 t2-3=t
    happiness: ˈhæpiːnəs hap-pi-ness h0-1=h a1-2=æ1 pp2-4=p i<y4-5=iː0 n5-6=n e6-7=ə0~ ss7-9=s
    laziness: ˈleɪziːnəs la-zi-ness l0-1=l a1-2=eɪ1 z2-3=z i<y3-4=iː0 n4-5=n e5-6=ə0~ ss6-8=s
    homework: ˈhoʊmˌwɜrk home-work h0-1=h o_e1-2,3-4=oʊ1 m2-3=m w4-5=w or5-7=ɜr2 k7-8=k
    molehill: ˈmoʊlˌhɪl mole-hill m0-1=m o_e1-2,3-4=oʊ1 l2-3=l h4-5=h i5-6=ɪ2 ll6-8=l
    rulebook: ˈruːlˌbʊk rule-book r0-1=r u_e1-2,3-4=uː1 l2-3=l b4-5=b oo5-7=ʊ2 k7-8=k
    polecat: ˈpoʊlˌkæt pole-cat p0-1=p o_e1-2,3-4=oʊ1 l2-3=l c4-5=k a5-6=æ2 t6-7=t
    dribbling: ˈdrɪbəlɪŋ drib-bling d0-1=d r1-2=r i2-3=ɪ1 bb3-5=b l<le5-6=əl0 ing6-9=ɪŋ!0
    morning: ˈmɔrnɪŋ morn-ing m0-1=m or1-3=ɔr1 n3-4=n i4-5=ɪ0 ng5-7=ŋ
    mistake: mɪsˈteɪk mis-take m0-1=m i1-2=ɪ0 s2-3=s t3-4=t a_e4-5,6-7=eɪ1 k5-6=k
    discover: dɪsˈkʌvər dis-cov-er d0-1=d i1-2=ɪ0 s2-3=s c3-4=k o4-5=ʌ1 v5-6=v er6-8=ər{er=ɜr}0
    castle: ˈkæsəl cas-tle c0-1=k a1-2=æ1 st2-4=s le4-6=əl0
    whistle: ˈwɪsəl whis-tle wh0-2=w i2-3=ɪ1 st3-5=s le5-7=əl0
    ticket: ˈtɪkət tick-et t0-1=t i1-2=ɪ1 ck2-4=k e4-5=ə0~ t5-6=t
    tackle: ˈtækəl tack-le t0-1=t a1-2=æ1 ck2-4=k le4-6=əl0
    special: ˈspɛʃəl spe-cial s0-1=s p1-2=p e2-3=ɛ1 ci3-5=ʃ a5-6=ə0~ l6-7=l
    ocean: ˈoʊʃən o-cean o0-1=oʊ1 ce1-3=ʃ a3-4=ə0~ n4-5=n
    pigeon: ˈpɪdʒən pi-geon p0-1=p i1-2=ɪ1 ge2-4=dʒ o4-5=ə0~ n5-6=n
    mission: ˈmɪʃən mis-sion m0-1=m i1-2=ɪ1 ssion2-7=ʃən0
    passion: ˈpæʃən pas-sion p0-1=p a1-2=æ1 ssion2-7=ʃən0
    tune: tuːn tune t0-1=t u_e1-2,3-4=uː1 n2-3=n
    duty: ˈduːtiː du-ty d0-1=d u1-2=uː1 t2-3=t y3-4=iː0
    furry: ˈfɜriː fur-ry f0-1=f urr1-4=ɜr{ur=ɜr}1 y4-5=iː0
    purr: pɜr purr p0-1=p urr1-4=ɜr{ur=ɜr}1
    area: ˈɛriːə ar-e-a a0-1=ɛ{a=eɪ}1 r1-2=r e2-3=iː0 a3-4=ə0~
    parent: ˈpɛrənt par-ent p0-1=p a1-2=ɛ{a=eɪ}1 r2-3=r e3-4=ə0~ n4-5=n t5-6=t
    various: ˈvɛriːəs var-i-ous v0-1=v a1-2=ɛ{a=eɪ}1 r2-3=r i3-4=iː0 ou4-6=ə0 s6-7=s
    carry: ˈkæriː car-ry c0-1=k a1-2=æ1 rr2-4=r y4-5=iː0
    hero: ˈhɪroʊ he-ro h0-1=h e1-2=ɪ{e=iː}1 r2-3=r o3-4=oʊ0
    zero: ˈzɪroʊ ze-ro z0-1=z e1-2=ɪ{e=iː}1 r2-3=r o3-4=oʊ0
    story: ˈstɔriː sto-ry s0-1=s t1-2=t or2-4=ɔr1 y4-5=iː0
    library: ˈlaɪˌbrɛriː li-brar-y l0-1=l i1-2=aɪ1 b2-3=b r3-4=r a4-5=ɛ{a=eɪ}2 r5-6=r y6-7=iː0
    secondary: ˈsɛkənˌdɛriː sec-on-dar-y s0-1=s e1-2=ɛ1 c2-3=k o3-4=ə0~ n4-5=n d5-6=d a6-7=ɛ{a=eɪ}2 r7-8=r y8-9=iː0
    necessary: ˈnɛsəˌsɛriː nec-es-sar-y n0-1=n e1-2=ɛ1 c2-3=s e3-4=ə0~ ss4-6=s a6-7=ɛ{a=eɪ}2 r7-8=r y8-9=iː0
    ordinary: ˈɔrdəˌnɛriː or-di-nar-y or0-2=ɔr1 d2-3=d i3-4=ə0~ n4-5=n a5-6=ɛ{a=eɪ}2 r6-7=r y7-8=iː0
    ceremony: ˈsɛrəˌmoʊniː cer-e-mo-ny c0-1=s e1-2=ɛ1 r2-3=r e3-4=ə0~ m4-5=m o5-6=oʊ2 n6-7=n y7-8=iː0
    matrimony: ˈmætrəˌmoʊniː mat-ri-mo-ny m0-1=m a1-2=æ1 t2-3=t r3-4=r i4-5=ə0~ m5-6=m o6-7=oʊ2 n7-8=n y8-9=iː0
    they’re: ðɛr they're th0-2=ð ey2-4=ɛ1 're4-7=r
    you’re: jʊr you're y0-1=j ou1-3=ʊ1 're3-6=r
    poor: pʊr poor p0-1=p oor1-4=ʊr1
    player: ˈpleɪər play-er p0-1=p l1-2=l ay2-4=eɪ1 er4-6=ər{er=ɜr}!0
    lawyer: ˈlɔjər law-yer l0-1=l aw1-3=ɔ1 y3-4=j er4-6=ər{er=ɜr}0
    royal: ˈrɔɪəl roy-al r0-1=r oy1-3=ɔɪ1 a3-4=ə0~ l4-5=l
    admirer: ədˈmaɪrər ad-mir-er a0-1=ə0~ d1-2=d m2-3=m ir<ire3-5=aɪr1 er5-7=ər{er=ɜr}!0
    choir: kwaɪr choir ch0-2=k oir2-5=waɪr1
    squire: skwaɪr squire s0-1=s qu1-3=kw ire3-6=aɪr1
    iron: ˈaɪərn i-ron ir0-2=aɪər{ir=aɪɜr}1 o2-3=° n3-4=n
    onion: ˈʌnjən on-ion o0-1=ʌ1 n1-2=n i2-3=j{i=iː} o3-4=ə0~ n4-5=n
    million: ˈmɪljən mil-lion m0-1=m i1-2=ɪ1 ll2-4=l i4-5=j{i=iː} o5-6=ə0~ n6-7=n
    bath: bæθ bath b0-1=b a1-2=æ1 th2-4=θ
    advantage: ædˈvæntɪdʒ ad-van-tage a0-1=æ0 d1-2=d v2-3=v a3-4=æ1 n4-5=n t5-6=t a6-7=ɪ0~ ge7-9=dʒ
    laugh: læf laugh l0-1=l augh1-5=æf1
    half: hæf half h0-1=h a1-2=æ1 lf2-4=f
    wander: ˈwɑndər wan-der w0-1=w a1-2=ɑ1 n2-3=n d3-4=d er4-6=ər{er=ɜr}0
    wallet: ˈwɔlət wal-let w0-1=w a1-2=ɔ1 ll2-4=l e4-5=ə0~ t5-6=t
    wallow: ˈwɑloʊ wal-low w0-1=w a1-2=ɑ1 ll2-4=l ow4-6=oʊ0
    talk: tɔk talk t0-1=t a1-2=ɔ1 lk2-4=k
    walk: wɔk walk w0-1=w a1-2=ɔ1 lk2-4=k
    warm: wɔrm warm w0-1=w ar1-3=ɔr1 m3-4=m
    swarm: swɔrm swarm s0-1=s w1-2=w ar2-4=ɔr1 m4-5=m
    quarrel: ˈkwɔrəl quar-rel qu0-2=kw a2-3=ɔ{a=ɑ}1 rr3-5=r e5-6=ə0~ l6-7=l
    because: bɪˈkɔz be-cause b0-1=b e1-2=ɪ0~ c2-3=k au3-5=ɔ1 se5-7=z
    sausage: ˈsɔsədʒ sau-sage s0-1=s au1-3=ɔ1 s3-4=s a4-5=ə0~ ge5-7=dʒ
    laundry: ˈlɔndriː laun-dry l0-1=l au1-3=ɔ1 n3-4=n d4-5=d r5-6=r y6-7=iː0
    yacht: jɑt yacht y0-1=j a1-2=ɑ1 ch2-4=° t4-5=t
    was: wʌz was w0-1=w a1-2=ʌ1 s2-3=z
    what: wʌt what wh0-2=w a2-3=ʌ1 t3-4=t
    orange: ˈɔrəndʒ or-ange or0-2=ɔr1 a2-3=ə0~ n3-4=n ge4-6=dʒ
    tomorrow: təˈmɑˌroʊ to-mor-row t0-1=t o1-2=ə0~ m2-3=m o3-4=ɑ1 rr4-6=r ow6-8=oʊ2
    worry: ˈwɜriː wor-ry w0-1=w orr1-4=ɜr{or=ɜr}1 y4-5=iː0
    courage: ˈkɜrədʒ cour-age c0-1=k our1-4=ɜr1 a4-5=ə0~ ge5-7=dʒ
    squirrel: ˈskwɜrəl squir-rel s0-1=s qu1-3=kw irr3-6=ɜr{ir=ɜr}1 e6-7=ə0~ l7-8=l
    stirring: ˈstɜrɪŋ stir-ring s0-1=s t1-2=t irr<ir2-5=ɜr1 ing5-8=ɪŋ!0
    student: ˈstuːdənt stu-dent s0-1=s t1-2=t u2-3=uː1 d3-4=d e4-5=ə0~ n5-6=n t6-7=t
    lieutenant: luːˈtɛnənt lieu-ten-ant l0-1=l ieu1-4=uː0 t4-5=t e5-6=ɛ1 n6-7=n a7-8=ə0~ n8-9=n t9-10=t
    dinosaur: ˈdaɪnəˌsɔr di-no-saur d0-1=d i1-2=aɪ1 n2-3=n o3-4=ə0~ s4-5=s au5-7=ɔ2 r7-8=r
    scissors: ˈsɪzərz scis-sors sc0-2=s i2-3=ɪ1 ss3-5=z or5-7=ər{or=ɜr}0 s7-8=z!
    clerk: klɜrk clerk c0-1=k l1-2=l er2-4=ɜr1 k4-5=k
    herb: ɜrb herb h0-1=° er1-3=ɜr1 b3-4=b
    nephew: ˈnɛfjuː neph-ew n0-1=n e1-2=ɛ1 ph2-4=f ew4-6=juː0
    stories: ˈstɔriːz sto-ries s0-1=s t1-2=t or2-4=ɔr1 ie<y4-6=iː0 s6-7=z!
    carried: ˈkæriːd car-ried c0-1=k a1-2=æ1 rr2-4=r ie<y4-6=iː0 d6-7=d!
    argued: ˈɑrɡjuːd ar-gued ar0-2=ɑr1 g2-3=ɡ ue3-5=juː0 d5-6=d!
    cities: ˈsɪtiːz cit-ies c0-1=s i1-2=ɪ1 t2-3=t ie<y3-5=iː0 s5-6=z!
    giraffes: dʒəˈræfs gi-raffes g0-1=dʒ i1-2=ə0~ r2-3=r a3-4=æ1 ffe4-7=f s7-8=s!
    puzzle: ˈpʌzəl puz-zle p0-1=p u1-2=ʌ1 zz2-4=z le4-6=əl0
    puzzling: ˈpʌzəlɪŋ puz-zling p0-1=p u1-2=ʌ1 zz2-4=z l<le4-5=əl0 ing5-8=ɪŋ!0
    middle: ˈmɪdəl mid-dle m0-1=m i1-2=ɪ1 dd2-4=d le4-6=əl0
    acre: ˈeɪkər a-cre a0-1=eɪ1 c1-2=k re2-4=ər{re=ɜr}0
    centre: ˈsɛntər cen-tre c0-1=s e1-2=ɛ1 n2-3=n t3-4=t re4-6=ər{re=ɜr}0
    twelve: twɛlv twelve t0-1=t w1-2=w e2-3=ɛ1 l3-4=l ve4-6=v
    exact: ɪɡzˈækt ex-act e0-1=ɪ0~ x1-2=ɡz a2-3=æ1 c3-4=k t4-5=t
    example: ɪɡzˈæmpəl ex-am-ple e0-1=ɪ0~ x1-2=ɡz a2-3=æ1 m3-4=m p4-5=p le5-7=əl0
    queen: kwiːn queen qu0-2=kw ee2-4=iː1 n4-5=n
    quickly: ˈkwɪkliː quick-ly qu0-2=kw i2-3=ɪ1 ck3-5=k l5-6=l y6-7=iː0
    science: ˈsaɪəns sci-ence sc0-2=s i2-3=aɪ1 e3-4=ə0~ n4-5=n ce5-7=s
    guess: ɡɛs guess gu0-2=ɡ e2-3=ɛ1 ss3-5=s
    guitar: ɡɪˈtɑr gui-tar gu0-2=ɡ i2-3=ɪ0 t3-4=t ar4-6=ɑr1
    build: bɪld build b0-1=b ui1-3=ɪ1 l3-4=l d4-5=d
    biscuit: ˈbɪskət bis-cuit b0-1=b i1-2=ɪ1 s2-3=s c3-4=k ui4-6=ə0 t6-7=t
    circuit: ˈsɜrkət cir-cuit c0-1=s ir1-3=ɜr1 c3-4=k ui4-6=ə0 t6-7=t
    rhyme: raɪm rhyme rh0-2=r y_e2-3,4-5=aɪ1 m3-4=m
    autumn: ˈɔtəm au-tumn au0-2=ɔ1 t2-3=t u3-4=ə0~ mn4-6=m
    island: ˈaɪlənd is-land is0-2=aɪ1 l2-3=l a3-4=ə0~ n4-5=n d5-6=d
    doubt: daʊt doubt d0-1=d ou1-3=aʊ1 bt3-5=t
    answer: ˈænsər an-swer a0-1=æ1 n1-2=n sw2-4=s er4-6=ər{er=ɜr}0
    sword: sɔrd sword sw0-2=s or2-4=ɔr1 d4-5=d
    two: tuː two tw0-2=t o2-3=uː1
    knee: niː knee kn0-2=n ee2-4=iː1
    wrist: rɪst wrist wr0-2=r i2-3=ɪ1 s3-4=s t4-5=t
    gnome: noʊm gnome gn0-2=n o_e2-3,4-5=oʊ1 m3-4=m
    sign: saɪn sign s0-1=s i1-2=aɪ1 gn2-4=n
    column: ˈkɑləm col-umn c0-1=k o1-2=ɑ1 l2-3=l u3-4=ə0~ mn4-6=m
    climb: klaɪm climb c0-1=k l1-2=l i2-3=aɪ1 mb3-5=m
    thumb: θʌm thumb th0-2=θ u2-3=ʌ1 mb3-5=m
    rough: rʌf rough r0-1=r ough1-5=ʌf1
    though: ðoʊ though th0-2=ð ough2-6=oʊ1
    thought: θɔt thought th0-2=θ ough2-6=ɔ1 t6-7=t
    through: θruː through th0-2=θ r2-3=r ough3-7=uː1
    bough: baʊ bough b0-1=b ough1-5=aʊ1
    cough: kɔf cough c0-1=k ough1-5=ɔf1
    eight: eɪt eight eigh0-4=eɪ1 t4-5=t
    weight: weɪt weight w0-1=w eigh1-5=eɪ1 t5-6=t
    height: haɪt height h0-1=h eigh1-5=aɪ1 t5-6=t
    key: kiː key k0-1=k ey1-3=iː1
    money: ˈmʌniː mon-ey m0-1=m o1-2=ʌ1 n2-3=n ey3-5=iː0
    they: ðeɪ they th0-2=ð ey2-4=eɪ1
    prey: preɪ prey p0-1=p r1-2=r ey2-4=eɪ1
    eye: aɪ eye eye0-3=aɪ1
    buy: baɪ buy b0-1=b uy1-3=aɪ1
    guy: ɡaɪ guy g0-1=ɡ uy1-3=aɪ1
    people: ˈpiːpəl peo-ple p0-1=p eo1-3=iː1 p3-4=p le4-6=əl0
    friend: frɛnd friend f0-1=f r1-2=r ie2-4=ɛ1 n4-5=n d5-6=d
    said: sɛd said s0-1=s ai1-3=ɛ1 d3-4=d
    says: sɛz says s0-1=s ay1-3=ɛ1 s3-4=z
    any: ˈɛniː an-y a0-1=ɛ1 n1-2=n y2-3=iː0
    many: ˈmɛniː man-y m0-1=m a1-2=ɛ1 n2-3=n y3-4=iː0
    once: wʌns once o0-1=wʌ1 n1-2=n ce2-4=s
    one: wʌn one o0-1=wʌ1 n1-2=n e2-3=°
    women: ˈwɪmən wom-en w0-1=w o1-2=ɪ1 m2-3=m e3-4=ə0~ n4-5=n
    busy: ˈbɪziː bus-y b0-1=b u1-2=ɪ1 s2-3=z y3-4=iː0
    pretty: ˈprɪtiː pret-ty p0-1=p r1-2=r e2-3=ɪ1 tt3-5=t y5-6=iː0
    Wednesday: ˈwɛnzˌdeɪ wednes-day w0-1=w e1-2=ɛ1 d2-3=° n3-4=n e4-5=° s5-6=z d6-7=d ay7-9=eɪ2
    oh: oʊ oh oh0-2=oʊ1
    create: kriːˈeɪt cre-ate c0-1=k r1-2=r e2-3=iː0 a_e3-4,5-6=eɪ1 t4-5=t
    being: ˈbiːɪŋ be-ing b0-1=b e1-2=iː1 ing2-5=ɪŋ!0
    idea: aɪˈdiːə i-de-a i0-1=aɪ0 d1-2=d e2-3=iː1 a3-4=ə0~
    lion: ˈlaɪən li-on l0-1=l i1-2=aɪ1 o2-3=ə0~ n3-4=n
    poem: ˈpoʊəm po-em p0-1=p o1-2=oʊ1 e2-3=ə0~ m3-4=m
    quiet: ˈkwaɪət qui-et qu0-2=kw i2-3=aɪ1 e3-4=ə0~ t4-5=t
    radio: ˈreɪdiːˌoʊ ra-di-o r0-1=r a1-2=eɪ1 d2-3=d i3-4=iː0 o4-5=oʊ2
    video: ˈvɪdiːoʊ vid-e-o v0-1=v i1-2=ɪ1 d2-3=d e3-4=iː0 o4-5=oʊ0
    museum: mjuːˈziːəm mu-se-um m0-1=m u1-2=juː0 s2-3=z e3-4=iː1 u4-5=ə0~ m5-6=m
    violin: vaɪəˈlɪn vi-o-lin v0-1=v i1-2=aɪ0 o2-3=ə0~ l3-4=l i4-5=ɪ1 n5-6=n
    piano: piːˈænoʊ pi-an-o p0-1=p i1-2=iː0 a2-3=æ1 n3-4=n o4-5=oʊ0
`

describe.each(toBlocks(LINES))('$heading', ({ heading, lines }) => {
  it.each(lines)('%s', (word, expected) => {
    expect(say(heading as Accent, word)).toBe(expected)
  })
})
