// Which letters of a name most lands of the world say as English does. From the project's own knowledge of names, no source; each row names who
// bears the letters. Letters and sounds are written `m=M e=EH g=G`, the sounds in ARPAbet.

import { describe, expect, it } from 'vitest'
import {
  endsOpen,
  isEnglishHabit,
  isSaidAlike,
  isSaidAlikeThroughout,
  isSaidOddly,
  looksForeign,
} from '../../src/phonics/guess/world.ts'
import { toBlocks } from './blocks.ts'

const toUnits = (text: string) =>
  text.split(' ').map((part) => {
    const [letters = '', sounds = ''] = part.split('=')
    return { letters, phones: sounds === '' ? [] : sounds.split('+') }
  })

const QUESTIONS: Readonly<Record<string, (text: string) => boolean>> = {
  alike: (text) => isSaidAlike(toUnits(text)),
  throughout: (text) => isSaidAlikeThroughout(toUnits(text)),
  odd: (text) => isSaidOddly(toUnits(text)),
  habit: (text) => isEnglishHabit(toUnits(text)),
  foreign: looksForeign,
  open: endsOpen,
}

const ask = (asked: string): string => {
  const [question = '', text = ''] = asked.split(' | ')
  return (QUESTIONS[question]?.(text) ?? asked) ? 'yes' : 'no'
}

const LINES = `
  vowels that most lands say so
    yes: alike | i=IY m=M a=AA n=N i=IY
    no: alike | t=T a=AE m=M
    no: alike | a=EY d=D a=AH
    yes: alike | s=S o=OW f=F i=IY a=AH
    yes: alike | m=M ai=AY
    no: alike | m=M ai=EY
    yes: alike | b=B ao=AW
    no: alike | b=B ao=EY
    yes: alike | k=K l=L au=AW s=S
    no: alike | k=K l=L au=AO s=S
    yes: alike | m=M e=EH g=G
    yes: alike | e=EY s=S i=IY
    yes: alike | n=N e=AH
    no: alike | p=P e=IY p=P
    yes: alike | m=M ei=EY
    no: alike | m=M ei=IY
    yes: alike | a=AA m=M i=IY n=N a=AH
    yes: alike | i=Y o=OW
    no: alike | t=T i=IH m=M
    no: alike | t=T i=AY m=M
    yes: alike | o=OW m=M a=AA r=R i=IY
    yes: alike | o=AO l=L a=AH
    no: alike | t=T o=AA m=M
    yes: alike | s=S u=UW n=N i=IY
    yes: alike | p=P u=UH n=N a=AH
    no: alike | z=Z u=AH b=B
    yes: alike | y=Y u=UW k=K i=IY
    yes: alike | l=L y=IY
    no: alike | t=T y=AY
  consonants that most lands say so
    yes: alike | l=L u=UW c=K a=AH
    no: alike | a=AA c=S a=AH
    yes: alike | ch=CH i=IY
    no: alike | ch=K i=IY
    yes: alike | g=G i=IY t=T a=AH
    no: alike | g=JH i=IY n=N
    yes: alike | j=JH o=OW
    no: alike | j=Y o=OW
    yes: alike | l=L u=UW k=K a=AH s=S
    no: alike | l=L u=UW k=K a=AH s=Z
    yes: alike | z=Z a=AA s=Z a=AH
  a silent e and a worn-down one
    no: alike | k=K a_e=AA n=N
    yes: alike | w=W i=IY r=R e=EH m=M u=UW
    no: alike | w=W ire=IY+R m=M u=UW
    no: alike | are=AA m=M
    no: alike | o=OW l=L e=AH g=G
    yes: alike | s=S o=OW r=R e=AH n=N
    yes: alike | e=AH l=L a=AA n=N
    yes: alike | o=OW l=L e=EH g=G
    yes: alike | o=OW l=L a=AH g=G
    yes: alike | o=OW s=S e=AH
  nothing that can be said otherwise
    yes: throughout | m=M ar=AA+R t=T a=AH
    yes: throughout | i=IY g=G or=AO+R
    no: throughout | i=IY g=G or=ER
    no: throughout | m=M er=ER t=T a=AH
    no: throughout | m=M oo=UW n=N a=AH
    no: throughout | m=M a=AE n=N a=AH
    no: throughout | g=G u=UW s=S t=T a=AA v=F
    yes: throughout | g=G u=UW s=S t=T a=AA v=V
  sounds that English seldom gives
    yes: odd | ci=CH a=AH
    yes: odd | l=L o=OW r=R e=EH n=N z=Z
    no: odd | l=L o=OW p=P e=EH z=Z
    yes: odd | si=SH o=OW
    yes: odd | ti=SH a=AH
    yes: odd | si=ZH a=AH
    no: odd | m=M a=AA n=N si=SH o=OW
    no: odd | si=S a=AH
    yes: odd | d=D aw=AO i=IH d=D
    yes: odd | l=L ew=UW a=AH
    yes: odd | n=N ow=OW a=AH
    no: odd | d=D aw=AO n=N
    no: odd | iw=UW i=IH n=N
    yes: odd | n=N+Y a=AA
    no: odd | n=N a=AA
    yes: odd | a=AA l=L e=EH ss=Z a=AA
    no: odd | a=AA l=L e=EH ss=S a=AA
    yes: odd | o=OW v=F
    no: odd | o=OW v=V a=AH
    yes: odd | t=T o=OW l=L u=UW w= a=AA
    no: odd | w=W a=AA
    yes: odd | z=S a=AA
    yes: odd | z=ZH a=AA
    yes: odd | n=N a=AA zz=S a=AA
    no: odd | z=Z a=AA zz=Z o=OW
    yes: odd | j=Y a=AA n=N
    yes: odd | h=HH a=AA dj=Y i=IY
    no: odd | h=HH a=AA dj=JH i=IY
    no: odd | j=JH a=AA n=N
    yes: odd | ch=K i=IY
    yes: odd | g=JH i=IY
    no: odd | ch=CH i=IY
    no: odd | g=G i=IY
    no: odd | gh=G i=IY
  habits of English
    yes: habit | e=EH l=L n=N ur=ER
    yes: habit | t=T a_e=EY n=N
    yes: habit | y=Y u=AH n=N t=T
    no: habit | z=Z u=AH b=B
    yes: habit | z=Z u=AH ng=NG
    no: habit | z=Z u=UW ng=NG
    no: habit | z=Z u=UW n=N t=T a=AA
    no: habit | f=F l=L u=AH m=M p=P
    no: habit | p=P l=L u=AH n=N k=K
    no: habit | z=Z u=AH sh=SH t=T
    no: habit | z=Z u=AH b=B a=AA
    yes: habit | n=N ou=AW r=R
    no: habit | n=N ou=UW r=R
    no: habit | n=N ow=AW r=R
    no: habit | z=Z e=EH g=G
    yes: habit | b=B e=EH r=R d=D a=AE n=N
    yes: habit | f=F e=EH r=R g=G a=AH l=L
    no: habit | f=F e=EH r=R g=G a=AA l=L
    no: habit | f=F e=EH r=R g=G a=AH
    no: habit | f=F e=EH r=R g=G o=AH l=L
    yes: habit | sh=SH a=AA m=M s=S u=AH d=D ee=IY n=N
    no: habit | z=Z u=AH b=B o=AA g=G
    no: habit | r=R u=AH m=M p=P u=AH s=S
    no: habit | k=K er=ER p=P l=L u=AH n=N k=K
    no: habit | k=K er=ER p=P l=L u=AH m=M p=P
    yes: habit | v=V e=EY d=D r=R a=AA n=N a=AH
    yes: habit | e=IH l=L e=EH n=N
    yes: habit | e=IY l=L o=AO n=N
    no: habit | e=EH l=L o=AO n=N
    no: habit | o=AO l=L e=IY
    yes: habit | v=V a=AE l=L t=T e=EH
    no: habit | v=V a=AE n=N t=T e=EH
    no: habit | v=V a=AA l=L t=T e=EH
    yes: habit | d=D i=IH n=N i=IH s=Z
    no: habit | d=D i=IH n=N i=IH s=S
    yes: habit | r=R o=OW s=Z e=EH n=N
    no: habit | r=R o=OW s=S e=EH n=N
    yes: habit | m=M u=Y+UW s=S a=AA
    no: habit | m=M u=UW s=S a=AA
    yes: habit | n=N a=EH r=R y=IY
    yes: habit | a=EY d=D a=AA
    yes: habit | m=M ai=EY k=K
    no: habit | m=M ai=AY k=K
    no: habit | z=Z oa=OW b=B
  pairs of letters as English says them
    yes: habit | ai=EY s=S l=L i=IH ng=NG
    no: habit | ai=AY s=S l=L i=IH ng=NG
    yes: habit | g=G a=AA s=S p=P ar=ER
    no: habit | g=G a=AA s=S p=P ar=AA+R
    yes: habit | au=AO d=D o=AO
    yes: habit | d=D aw=AO d=D o=AO
    yes: habit | ay=EY k=K o=AO
    yes: habit | ea=IY d=D o=AO
    yes: habit | ea=EH d=D o=AO
    no: habit | ea=EY d=D o=AO
    yes: habit | l=L ei=IY f=F o=AO
    yes: habit | l=L ei=AY f=F o=AO
    yes: habit | eu=UW d=D o=AO
    yes: habit | n=N ew=UW d=D o=AO
    yes: habit | ie=AY d=D o=AO
    yes: habit | oa=OW d=D o=AO
    yes: habit | oe=OW d=D o=AO
    yes: habit | oi=OY d=D o=AO
    yes: habit | t=T o=AO d=D or=ER
    yes: habit | ou=AW d=D o=AO
    yes: habit | ow=AW d=D o=AO
    yes: habit | ue=UW d=D o=AO
    yes: habit | th=TH o=AO d=D o=AO
    yes: habit | th=DH o=AO d=D o=AO
    no: habit | th=T o=AO d=D o=AO
    yes: habit | ui=UW d=D o=AO
    no: habit | oo=UW d=D o=AO
  letters of a word of another land
    yes: foreign | ife
    no: foreign | alex
    no: foreign | ikes
    yes: foreign | aoife
    yes: foreign | oisin
    no: foreign | oil
    no: foreign | oink
    yes: foreign | iestyn
    yes: foreign | aeron
    yes: foreign | eoghan
    yes: foreign | ioan
    yes: foreign | iulia
    yes: foreign | uorra
    no: foreign | zeo
    yes: foreign | aaliyah
    no: foreign | baa
    no: foreign | baah
    no: foreign | baahh
    yes: foreign | adaeze
    yes: foreign | saoirse
    yes: foreign | meoin
    yes: foreign | hawaii
    yes: foreign | luuk
    yes: foreign | duorra
    no: foreign | quote
    yes: foreign | giorgos
    yes: foreign | giulia
    no: foreign | magic
    no: foreign | ragione
    yes: foreign | ndidi
    yes: foreign | xhosa
    yes: foreign | bjorn
    yes: foreign | daksh
    yes: foreign | miquel
    no: foreign | quell
    yes: foreign | nkechi
    no: foreign | handle
    yes: foreign | siobhan
    yes: foreign | khadija
    yes: foreign | eszter
    yes: foreign | wojtek
    yes: foreign | pirjo
    yes: foreign | anrijs
    no: foreign | gobjam
    yes: foreign | katja
    no: foreign | bridgehead
    no: foreign | adhere
    yes: foreign | buddha
    no: foreign | night
    no: foreign | rough
    yes: foreign | meghna
    yes: foreign | marzena
    no: foreign | marz
    yes: foreign | ljuba
    yes: foreign | tariq
    no: foreign | queen
    yes: foreign | mehmet
    no: foreign | oh
    yes: foreign | alexantr
    no: foreign | centrum
    yes: foreign | badr
    yes: foreign | hafiz
    no: foreign | quiz
    no: foreign | zabgiz
    yes: foreign | manoj
    yes: foreign | beatriz
    yes: foreign | cologn
    yes: foreign | vagn
    no: foreign | sign
    no: foreign | zub
    no: foreign | meg
  open ends
    yes: open | sofa
    yes: open | taxi
    yes: open | zero
    yes: open | emu
    no: open | zoo
    no: open | you
    no: open | cat
    no: open | toi
    yes: open | ennui
    yes: open | radioi
  at the end of a word
    no: odd | s=S aw=AO
    no: odd | n=N
    no: habit | n=N
    no: habit | z=Z u=AH b=B
    no: habit | z=Z u=AH
    yes: habit | a=AA b=B u=AH
    no: habit | a=AA b=B e=EY
    no: habit | a=AA b=B a=AE
    yes: habit | a=AA l=L a=AA s=Z
    no: habit | a=AA l=L a=AA z=Z
    yes: alike | z=Z o=OW z=Z
    no: alike | z=Z o=OW s=Z
    yes: alike | c=K l=L aire=EH+R
    no: alike | c=K l=L are=EH+R
    no: alike | c=K l=L a_e=EY
`

describe.each(toBlocks(LINES))('$heading', ({ lines }) => {
  it.each(lines)('%s: %s', (expected, asked) => {
    expect(ask(asked)).toBe(expected)
  })
})
